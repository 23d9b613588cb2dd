package org.frisket.material;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

import org.frisket.material.sizes.Format;
import org.frisket.material.weights.BasisWeight;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.Thickness;

/** A stock in the making; null takes a value away. Everything is checked when it is built. */
public final class StockBuilder {

	private String id;
	private String name;
	private String description = "";
	private StockFamily family;
	private BigDecimal grammage;
	private BigDecimal pounds;
	private Grade grade;
	private Thickness thickness;
	private Caliper.Source source;
	private String colour = "";
	private Finish finish = Finish.UNKNOWN;
	private Grain grain = Grain.UNKNOWN;
	private List<Format> sizes = List.of();
	private BigDecimal price;
	private Currency currency;
	private BigDecimal onHand = BigDecimal.ZERO;
	private BigDecimal lowWater = BigDecimal.ZERO;
	private BigDecimal abrasion = BigDecimal.ONE;
	private String notes = "";

	StockBuilder() {
	}

	StockBuilder(Stock stock) {
		id = stock.id();
		name = stock.name();
		description = stock.description();
		family = stock.family();
		grammage = stock.statedGrammage().orElse(null);
		pounds = stock.basisWeight().map(BasisWeight::pounds).orElse(null);
		grade = stock.basisWeight().map(BasisWeight::grade).orElse(null);
		thickness = stock.statedCaliper().map(Caliper::thickness).orElse(null);
		source = stock.statedCaliper().map(Caliper::source).orElse(null);
		colour = stock.colour();
		finish = stock.finish();
		grain = stock.grain();
		sizes = stock.sizes();
		price = stock.price().map(Price::amount).orElse(null);
		currency = stock.price().map(Price::currency).orElse(null);
		onHand = stock.onHand();
		lowWater = stock.lowWater();
		abrasion = stock.abrasion();
		notes = stock.notes();
	}

	public StockBuilder id(String value) {
		id = value;
		return this;
	}

	/** The id that was given, if one was. */
	public Optional<String> id() {
		return Optional.ofNullable(id);
	}

	public StockBuilder name(String value) {
		name = value;
		return this;
	}

	public StockBuilder description(String value) {
		description = value;
		return this;
	}

	public StockBuilder family(StockFamily value) {
		family = value;
		return this;
	}

	/** In g/m². */
	public StockBuilder grammage(BigDecimal value) {
		grammage = value;
		return this;
	}

	public StockBuilder basisWeight(BasisWeight value) {
		return pounds(value == null ? null : value.pounds()).grade(value == null ? null : value.grade());
	}

	/** Of the basis weight, which needs its grade as well. */
	public StockBuilder pounds(BigDecimal value) {
		pounds = value;
		return this;
	}

	public StockBuilder grade(Grade value) {
		grade = value;
		return this;
	}

	/** Measured, unless it is said to be estimated. */
	public StockBuilder caliper(Thickness value) {
		thickness = value;
		return this;
	}

	public StockBuilder caliperSource(Caliper.Source value) {
		source = value;
		return this;
	}

	public StockBuilder colour(String value) {
		colour = value;
		return this;
	}

	public StockBuilder finish(Finish value) {
		finish = value;
		return this;
	}

	public StockBuilder grain(Grain value) {
		grain = value;
		return this;
	}

	public StockBuilder sizes(List<Format> value) {
		sizes = value;
		return this;
	}

	/** Needs its currency as well. */
	public StockBuilder price(BigDecimal value) {
		price = value;
		return this;
	}

	public StockBuilder currency(Currency value) {
		currency = value;
		return this;
	}

	public StockBuilder onHand(BigDecimal value) {
		onHand = value;
		return this;
	}

	public StockBuilder lowWater(BigDecimal value) {
		lowWater = value;
		return this;
	}

	public StockBuilder abrasion(BigDecimal value) {
		abrasion = value;
		return this;
	}

	public StockBuilder notes(String value) {
		notes = value;
		return this;
	}

	/** @throws InvalidStockException if something is missing or cannot be so */
	public Stock build() {
		return new Stock(id != null || name == null ? id : StockIds.of(name), name, orEmpty(description), family,
				Optional.ofNullable(grammage), basis(), caliper(), orEmpty(colour), finish == null ? Finish.UNKNOWN : finish,
				grain == null ? Grain.UNKNOWN : grain, sizes == null ? List.of() : sizes, price(),
				onHand == null ? BigDecimal.ZERO : onHand, lowWater == null ? BigDecimal.ZERO : lowWater,
				abrasion == null ? BigDecimal.ONE : abrasion, orEmpty(notes));
	}

	private static String orEmpty(String text) {
		return text == null ? "" : text;
	}

	private Optional<BasisWeight> basis() {
		if (pounds == null && grade == null) {
			return Optional.empty();
		}
		if (pounds == null) {
			throw new InvalidStockException(StockField.BASIS_WEIGHT, Messages.StockBuilder_noPounds);
		}
		if (grade == null) {
			throw new InvalidStockException(StockField.GRADE, Messages.StockBuilder_noGrade);
		}
		return Optional.of(new BasisWeight(pounds, grade));
	}

	private Optional<Caliper> caliper() {
		if (thickness == null) {
			return Optional.empty();
		}
		return Optional.of(new Caliper(thickness, source == null ? Caliper.Source.MEASURED : source));
	}

	private Optional<Price> price() {
		if (price == null) {
			return Optional.empty();
		}
		if (currency == null) {
			throw new InvalidStockException(StockField.CURRENCY, Messages.StockBuilder_noCurrency);
		}
		return Optional.of(new Price(price, currency));
	}
}
