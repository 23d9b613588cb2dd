package org.frisket.material.shelf;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.Caliper;
import org.frisket.material.InvalidStockException;
import org.frisket.material.Stock;
import org.frisket.material.StockBuilder;
import org.frisket.material.StockFamily;
import org.frisket.material.StockField;
import org.frisket.material.weights.Measures;
import org.frisket.material.weights.Reading;
import org.frisket.material.weights.Thickness;

/**
 * What is written in a form about a stock: a text for each field, whatever it says. It tells at any time what is wrong
 * with each, and which stock it comes to if nothing is.
 */
public final class StockDraft {

	/** What the weight and the thickness are said by; what is wrong with one says nothing of the others. */
	private static final Set<StockField> MEASURES = EnumSet.of(StockField.GRAMMAGE, StockField.BASIS_WEIGHT,
			StockField.GRADE, StockField.CALIPER, StockField.CALIPER_SOURCE);
	private static final Pattern DECIMAL_COMMA = Pattern.compile("^(\\s*[+-]?\\d*),(\\d+)");
	/** As many as are kept. */
	private static final int CALIPER_DECIMALS = 6;

	private final Optional<Stock> before;
	private final Map<StockField, String> texts = new EnumMap<>(StockField.class);
	private final boolean inches;

	private StockDraft(Optional<Stock> before, Stock shown, boolean inches) {
		this.before = before;
		this.inches = inches;
		for (StockField field : StockField.values()) {
			texts.put(field, shown == null ? "" : shown(field, shown));
		}
		texts.put(StockField.ID, before.map(Stock::id).orElse(""));
		if (texts.get(StockField.CALIPER_SOURCE).isEmpty()) {
			texts.put(StockField.CALIPER_SOURCE, StockField.wordOf(Caliper.Source.MEASURED));
		}
		if (shown == null) {
			texts.put(StockField.FAMILY, StockField.wordOf(StockFamily.CARD));
		}
	}

	/** @param inches whether a caliper is written in mils, and a bare number means them */
	public static StockDraft empty(boolean inches) {
		return new StockDraft(Optional.empty(), null, inches);
	}

	/** A new stock that begins like another. */
	public static StockDraft like(Stock stock, boolean inches) {
		return new StockDraft(Optional.empty(), stock, inches);
	}

	public static StockDraft of(Stock stock, boolean inches) {
		return new StockDraft(Optional.of(stock), stock, inches);
	}

	private String shown(StockField field, Stock stock) {
		return switch (field) {
		case SIZES -> field.text(stock).replace(" | ", "\n");
		case CALIPER -> stock.statedCaliper().map(caliper -> inches
				? Measures.text(caliper.thickness().mils(), CALIPER_DECIMALS) + " mil"
				: caliper.thickness().mm().toPlainString() + " mm").orElse("");
		default -> field.text(stock);
		};
	}

	public String text(StockField field) {
		return texts.get(field);
	}

	public void set(StockField field, String text) {
		texts.put(field, Objects.requireNonNull(text));
	}

	/** Whether it says anything else than the stock it was made of. */
	public boolean isChanged() {
		return !texts.equals(new StockDraft(before, before.orElse(null), inches).texts);
	}

	/** What was changed here, laid over what somebody else has made of the stock meanwhile. */
	public StockDraft onto(Stock theirs) {
		StockDraft fresh = new StockDraft(before, before.orElse(null), inches);
		StockDraft both = of(theirs, inches);
		texts.forEach((field, text) -> {
			if (!text.equals(fresh.texts.get(field))) {
				both.texts.put(field, text);
			}
		});
		return both;
	}

	/** What is wrong, for people, by field; nothing may be kept while there is anything. */
	public Map<StockField, String> problems() {
		Map<StockField, String> problems = new EnumMap<>(StockField.class);
		StockBuilder builder = read(problems);
		while (true) {
			try {
				builder.build();
				return problems;
			} catch (InvalidStockException wrong) {
				boolean known = problems.containsKey(wrong.field()) || MEASURES.contains(wrong.field())
						&& problems.keySet().stream().anyMatch(MEASURES::contains);
				if (!known) {
					problems.put(wrong.field(), wrong.getMessage());
				}
				if (!calm(builder, wrong.field())) {
					return problems;
				}
			} catch (IllegalArgumentException wrong) {
				// of a weight that no paper has; values that are read one by one have been told of already
				problems.putIfAbsent(StockField.BASIS_WEIGHT, wrong.getMessage());
				builder.basisWeight(null);
			}
		}
	}

	/** Has a wrong field say something harmless, so that the next one is found. Answers false where there is none. */
	private static boolean calm(StockBuilder builder, StockField field) {
		switch (field) {
		case NAME, ID -> builder.name("x").id("x");
		case FAMILY -> builder.family(StockFamily.OTHER);
		case DESCRIPTION -> builder.description("");
		case COLOUR -> builder.colour("");
		case NOTES -> builder.notes("");
		case PRICE, CURRENCY -> builder.price(null);
		case ON_HAND -> builder.onHand(null);
		case LOW_WATER -> builder.lowWater(null);
		case ABRASION -> builder.abrasion(null);
		case GRAMMAGE, BASIS_WEIGHT, GRADE, CALIPER, CALIPER_SOURCE ->
			builder.basisWeight(null).caliper(null).grammage(BigDecimal.ONE);
		default -> {
			return false;
		}
		}
		return true;
	}

	/** The stock that it comes to; empty while anything is wrong. */
	public Optional<Stock> stock() {
		Map<StockField, String> problems = new EnumMap<>(StockField.class);
		StockBuilder builder = read(problems);
		if (!problems.isEmpty() || !problems().isEmpty()) {
			return Optional.empty();
		}
		return Optional.of(builder.build());
	}

	private StockBuilder read(Map<StockField, String> problems) {
		StockBuilder builder = Stock.named(null);
		for (StockField field : StockField.values()) {
			try {
				read(builder, field, texts.get(field).strip());
			} catch (IllegalArgumentException wrong) {
				problems.put(field, wrong.getMessage());
			}
		}
		// jobs refer to it: it never changes
		before.ifPresent(stock -> builder.id(stock.id()));
		return builder;
	}

	private void read(StockBuilder builder, StockField field, String text) {
		if (text.isEmpty()) {
			return;
		}
		String plain = field.isNumber() ? DECIMAL_COMMA.matcher(text).replaceFirst("$1.$2") : text;
		switch (field) {
		case GRAMMAGE -> field.set(builder, without(plain, "g/m²|g/m2|gsm|g/qm"));
		case BASIS_WEIGHT -> pounds(builder, plain);
		case CALIPER -> builder.caliper(caliper(plain));
		case SIZES -> field.set(builder, plain.replaceAll("\\R|;", "|"));
		case ON_HAND -> builder.onHand(counted(plain));
		default -> field.set(builder, plain);
		}
	}

	private static String without(String text, String units) {
		return text.replaceFirst("(?i)\\s*(" + units + ")$", "");
	}

	/** A grade behind the pounds counts where none is chosen. */
	private void pounds(StockBuilder builder, String text) {
		if (text.matches("[\\d.]+.*\\p{L}{3,}.*") && Reading.parse(text) instanceof Reading.Basis basis) {
			builder.basisWeight(basis.weight());
		} else {
			StockField.BASIS_WEIGHT.set(builder, without(text, "lbs?\\.?|#"));
		}
	}

	private Thickness caliper(String text) {
		String withUnit = text.matches("[\\d.]+") ? text + (inches ? "mil" : "mm") : text;
		if (text.matches("[\\d.].*") && Reading.parse(withUnit) instanceof Reading.Caliper caliper) {
			return new Thickness(
					Measures.rounded(caliper.thickness().mm(), CALIPER_DECIMALS));
		}
		throw new IllegalArgumentException(NLS.bind(Messages.StockDraft_caliper, text));
	}

	/** A number with a sign is what has come in, or been used, since. */
	private BigDecimal counted(String text) {
		StockBuilder scratch = Stock.named("x").family(StockFamily.OTHER).grammage(BigDecimal.ONE);
		boolean signed = text.startsWith("+") || text.startsWith("-") || text.startsWith("\u2212");
		StockField.ON_HAND.set(scratch, signed ? text.substring(1).strip() : text);
		BigDecimal number = scratch.build().onHand();
		if (!signed) {
			return number;
		}
		BigDecimal had = before.map(Stock::onHand).orElse(BigDecimal.ZERO);
		return Measures.plain(text.startsWith("+") ? had.add(number) : had.subtract(number));
	}
}
