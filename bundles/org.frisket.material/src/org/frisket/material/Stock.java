package org.frisket.material;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.frisket.material.sizes.Format;
import org.frisket.material.weights.BasisWeight;
import org.frisket.material.weights.Bulk;
import org.frisket.material.weights.MeasureException;
import org.frisket.material.weights.Measures;

/**
 * A stock: what its sheets are, what they cost and how many are at hand. Made with a {@link StockBuilder}.
 *
 * @param id             by which jobs refer to it; it never changes
 * @param name           by which people know it
 * @param description    of what it is, whoever makes it
 * @param statedGrammage in g/m², as the pack states it
 * @param basisWeight    as the pack states it
 * @param statedCaliper  measured, or estimated by somebody
 * @param sizes          it comes in
 * @param price          of a sheet, or of a metre of a roll
 * @param onHand         in sheets, or metres of a roll
 * @param lowWater       the number on hand at which it is time to order; 0 for none
 * @param abrasion       how many times as fast as plain card it wears a blade
 */
public record Stock(String id, String name, String description, StockFamily family,
		Optional<BigDecimal> statedGrammage, Optional<BasisWeight> basisWeight, Optional<Caliper> statedCaliper,
		String colour, Finish finish, Grain grain, List<Format> sizes, Optional<Price> price, BigDecimal onHand,
		BigDecimal lowWater, BigDecimal abrasion, String notes) {

	/** @throws InvalidStockException if something cannot be so, or contradicts something else */
	public Stock {
		name = StockRules.name(name);
		id = StockRules.id(id);
		description = StockRules.text(StockField.DESCRIPTION, description, StockRules.LONG_TEXT);
		StockRules.required(StockField.FAMILY, family);
		statedGrammage = statedGrammage.map(StockRules::grammage);
		basisWeight.ifPresent(StockRules::basisWeight);
		statedCaliper.ifPresent(StockRules::caliper);
		colour = StockRules.text(StockField.COLOUR, colour, StockRules.SHORT_TEXT);
		sizes = List.copyOf(sizes);
		onHand = StockRules.amount(StockField.ON_HAND, onHand);
		lowWater = StockRules.amount(StockField.LOW_WATER, lowWater);
		abrasion = StockRules.abrasion(abrasion);
		notes = StockRules.text(StockField.NOTES, notes, StockRules.LONG_TEXT);
		StockRules.consistent(family, statedGrammage, basisWeight, statedCaliper);
	}

	/** A stock to be made; its id is made of its name if it is given none. */
	public static StockBuilder named(String name) {
		return new StockBuilder().name(name);
	}

	/** This stock, to be changed. */
	public StockBuilder change() {
		return new StockBuilder(this);
	}

	/** In g/m²: as stated, else that of the basis weight. */
	public Optional<BigDecimal> grammage() {
		return statedGrammage.or(() -> basisWeight.map(BasisWeight::grammage));
	}

	/** As stated, else estimated from the grammage and the usual bulk of the finish. */
	public Optional<Caliper> caliper() {
		return statedCaliper.or(() -> grammage().flatMap(this::estimate));
	}

	private Optional<Caliper> estimate(BigDecimal grammage) {
		try {
			return Optional.of(new Caliper(finish.usualBulk().thickness(grammage), Caliper.Source.ESTIMATED));
		} catch (MeasureException beyondAnySheet) {
			return Optional.empty();
		}
	}

	/** Of a measured caliper; an estimated one would only give back what it was estimated from. */
	public Optional<Bulk> bulk() {
		return statedCaliper.filter(caliper -> caliper.source() == Caliper.Source.MEASURED)
				.flatMap(caliper -> grammage().map(grammage -> Bulk.of(caliper.thickness(), grammage)));
	}

	/** Whether it is time to order. */
	public boolean isLow() {
		return lowWater.signum() > 0 && onHand.compareTo(lowWater) <= 0;
	}

	/** This stock with more, or less, on hand. @throws InvalidStockException if that would be less than none */
	public Stock withMore(BigDecimal amount) {
		return change().onHand(Measures.plain(onHand.add(amount))).build();
	}
}
