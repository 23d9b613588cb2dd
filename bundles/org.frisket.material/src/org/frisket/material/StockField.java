package org.frisket.material;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.sizes.Format;
import org.frisket.material.sizes.Formats;
import org.frisket.material.weights.BasisWeight;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.Thickness;

/**
 * What there is to say about a stock, each as a text: the one description that files, the command line and forms go by. A
 * text that a field gives out is one that it takes in.
 */
public enum StockField {
	ID("id", Stock::id, StockBuilder::id), //
	NAME("name", Stock::name, StockBuilder::name), //
	DESCRIPTION("description", Stock::description, StockBuilder::description), //
	FAMILY("family", stock -> wordOf(stock.family()), (stock, text) -> stock.family(constant(StockFamily.class, text))), //
	GRAMMAGE("grammage", stock -> number(stock.statedGrammage()), (stock, text) -> stock.grammage(number(text))), //
	BASIS_WEIGHT("basis weight", stock -> number(stock.basisWeight().map(BasisWeight::pounds)),
			(stock, text) -> stock.pounds(number(text))), //
	GRADE("grade", stock -> stock.basisWeight().map(BasisWeight::grade).map(Grade::word).orElse(""),
			(stock, text) -> stock.grade(grade(text))), //
	CALIPER("caliper", stock -> number(stock.statedCaliper().map(caliper -> caliper.thickness().mm())),
			(stock, text) -> stock.caliper(new Thickness(number(text)))), //
	CALIPER_SOURCE("caliper source", stock -> stock.statedCaliper().map(Caliper::source).map(StockField::wordOf).orElse(""),
			(stock, text) -> stock.caliperSource(constant(Caliper.Source.class, text))), //
	COLOUR("colour", Stock::colour, StockBuilder::colour), //
	FINISH("finish", stock -> wordOf(stock.finish()), (stock, text) -> stock.finish(constant(Finish.class, text))), //
	GRAIN("grain", stock -> wordOf(stock.grain()), (stock, text) -> stock.grain(constant(Grain.class, text))), //
	SIZES("sizes", stock -> stock.sizes().stream().map(Format::toString).collect(Collectors.joining(" | ")),
			(stock, text) -> stock.sizes(sizes(text))), //
	PRICE("price", stock -> number(stock.price().map(Price::amount)), (stock, text) -> stock.price(number(text))), //
	CURRENCY("currency", stock -> stock.price().map(price -> price.currency().getCurrencyCode()).orElse(""),
			(stock, text) -> stock.currency(Price.currency(text.toUpperCase(Locale.ROOT)))), //
	ON_HAND("on hand", stock -> number(Optional.of(stock.onHand())), (stock, text) -> stock.onHand(number(text))), //
	LOW_WATER("low water", stock -> number(Optional.of(stock.lowWater())), (stock, text) -> stock.lowWater(number(text))), //
	ABRASION("abrasion", stock -> number(Optional.of(stock.abrasion())), (stock, text) -> stock.abrasion(number(text))), //
	NOTES("notes", Stock::notes, StockBuilder::notes);

	private final String word;
	private final Function<Stock, String> reader;
	private final BiConsumer<StockBuilder, String> writer;

	StockField(String word, Function<Stock, String> reader, BiConsumer<StockBuilder, String> writer) {
		this.word = word;
		this.reader = reader;
		this.writer = writer;
	}

	/** As files and the command line have it, in every language. */
	public String word() {
		return word;
	}

	/** As people read it. */
	public String label() {
		return switch (this) {
		case ABRASION -> Messages.field_abrasion;
		case BASIS_WEIGHT -> Messages.field_basisWeight;
		case CALIPER -> Messages.field_caliper;
		case CALIPER_SOURCE -> Messages.field_caliperSource;
		case COLOUR -> Messages.field_colour;
		case CURRENCY -> Messages.field_currency;
		case DESCRIPTION -> Messages.field_description;
		case FAMILY -> Messages.field_family;
		case FINISH -> Messages.field_finish;
		case GRADE -> Messages.field_grade;
		case GRAIN -> Messages.field_grain;
		case GRAMMAGE -> Messages.field_grammage;
		case ID -> Messages.field_id;
		case LOW_WATER -> Messages.field_lowWater;
		case NAME -> Messages.field_name;
		case NOTES -> Messages.field_notes;
		case ON_HAND -> Messages.field_onHand;
		case PRICE -> Messages.field_price;
		case SIZES -> Messages.field_sizes;
		};
	}

	/** Whether its text is a number, in g/m², lb, mm, sheets or of the currency. */
	public boolean isNumber() {
		return switch (this) {
		case GRAMMAGE, BASIS_WEIGHT, CALIPER, PRICE, ON_HAND, LOW_WATER, ABRASION -> true;
		default -> false;
		};
	}

	/** Empty for what is not known. */
	public String text(Stock stock) {
		return reader.apply(stock);
	}

	/**
	 * @param text empty to leave the field as it is
	 * @throws IllegalArgumentException if it is no value of this field; the message says why
	 */
	public void set(StockBuilder stock, String text) {
		if (!text.isBlank()) {
			writer.accept(stock, text.strip());
		}
	}

	/** How constants are written in files. */
	public static String wordOf(Enum<?> constant) {
		return constant.name().toLowerCase(Locale.ROOT);
	}

	private static <E extends Enum<E>> E constant(Class<E> type, String text) {
		return Arrays.stream(type.getEnumConstants()).filter(each -> wordOf(each).equalsIgnoreCase(text)).findFirst()
				.orElseThrow(() -> new IllegalArgumentException(
						NLS.bind(Messages.StockField_constant, text, words(type.getEnumConstants()))));
	}

	private static Grade grade(String text) {
		return Grade.named(text).orElseThrow(
				() -> new IllegalArgumentException(NLS.bind(Messages.StockField_constant, text, words(Grade.values()))));
	}

	private static String words(Enum<?>[] constants) {
		return Arrays.stream(constants).map(StockField::wordOf).collect(Collectors.joining(", "));
	}

	private static String number(Optional<BigDecimal> number) {
		return number.map(BigDecimal::toPlainString).orElse("");
	}

	/** A plain number with a decimal point; an exponent would let a short text be a number of any length. */
	private static BigDecimal number(String text) {
		if (!text.matches("[+-]?(\\d{1,15}(\\.\\d{0,15})?|\\.\\d{1,15})")) {
			throw new IllegalArgumentException(NLS.bind(Messages.StockField_number, text));
		}
		return new BigDecimal(text.endsWith(".") ? text + '0' : text);
	}

	private static List<Format> sizes(String text) {
		return Arrays.stream(text.split("\\|")).map(String::strip).filter(size -> !size.isEmpty()).map(Formats::parse)
				.toList();
	}
}
