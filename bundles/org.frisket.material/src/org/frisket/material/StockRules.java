package org.frisket.material;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.weights.BasisWeight;
import org.frisket.material.weights.Bulk;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.MeasureException;
import org.frisket.material.weights.Measures;

/** What is possible in a stock. */
final class StockRules {

	static final int SHORT_TEXT = 200;
	static final int LONG_TEXT = 4000;

	/** Of weights and lengths; as many are kept. */
	private static final int DECIMALS = 6;
	/** Of numbers of sheets and of factors. */
	private static final int FEW_DECIMALS = 3;
	private static final BigDecimal MOST = new BigDecimal(1_000_000_000);
	private static final BigDecimal MOST_ABRASION = new BigDecimal(100);

	/** As a part of the grammage: packs round what they print. Common practice, no source. */
	private static final BigDecimal ROUNDING = new BigDecimal("0.02");
	/** In cm³/g: from glassine to the loosest felt. Beyond it mm and mils are mixed up. Common practice, no source. */
	private static final BigDecimal LEAST_BULK = new BigDecimal("0.4");
	private static final BigDecimal MOST_BULK = new BigDecimal(6);

	private StockRules() {
	}

	static <T> T required(StockField field, T value) {
		if (value == null) {
			throw new InvalidStockException(field, NLS.bind(Messages.StockRules_missing, field.label()));
		}
		return value;
	}

	static String id(String id) {
		if (!required(StockField.ID, id).matches("[a-z0-9][a-z0-9._-]{0,63}")) {
			throw new InvalidStockException(StockField.ID, NLS.bind(Messages.StockRules_id, id));
		}
		return id;
	}

	static String name(String name) {
		String text = text(StockField.NAME, required(StockField.NAME, name), SHORT_TEXT);
		if (text.isEmpty()) {
			throw new InvalidStockException(StockField.NAME, NLS.bind(Messages.StockRules_missing, StockField.NAME.label()));
		}
		return text;
	}

	/** Without space around it. What no file and no database would give back as it is, is refused. */
	static String text(StockField field, String text, int most) {
		String plain = text.replace("\r\n", "\n").replace('\r', '\n').strip();
		boolean lines = most == LONG_TEXT;
		if (plain.length() > most) {
			throw new InvalidStockException(field,
					NLS.bind(Messages.StockRules_long, new Object[] { field.label(), plain.length(), most }));
		}
		if (plain.chars().anyMatch(c -> Character.isISOControl(c) && !(lines && (c == '\n' || c == '\t')))
				|| !StandardCharsets.UTF_8.newEncoder().canEncode(plain)) {
			throw new InvalidStockException(field, NLS.bind(Messages.StockRules_control, field.label()));
		}
		return plain;
	}

	static BigDecimal grammage(BigDecimal grammage) {
		try {
			return decimals(StockField.GRAMMAGE, Measures.grammage(grammage), DECIMALS);
		} catch (MeasureException e) {
			throw new InvalidStockException(StockField.GRAMMAGE, e.getMessage());
		}
	}

	static void basisWeight(BasisWeight weight) {
		decimals(StockField.BASIS_WEIGHT, weight.pounds(), DECIMALS);
	}

	static void caliper(Caliper caliper) {
		decimals(StockField.CALIPER, caliper.thickness().mm(), DECIMALS);
	}

	static BigDecimal amount(StockField field, BigDecimal amount) {
		if (amount.signum() < 0) {
			throw new InvalidStockException(field,
					NLS.bind(Messages.StockRules_negative, field.label(), amount.toPlainString()));
		}
		return notBeyond(field, amount, MOST);
	}

	static BigDecimal abrasion(BigDecimal abrasion) {
		if (abrasion.signum() <= 0) {
			throw new InvalidStockException(StockField.ABRASION, NLS.bind(Messages.StockRules_notAbove0,
					StockField.ABRASION.label(), abrasion.toPlainString()));
		}
		return notBeyond(StockField.ABRASION, abrasion, MOST_ABRASION);
	}

	private static BigDecimal notBeyond(StockField field, BigDecimal value, BigDecimal most) {
		if (value.compareTo(most) > 0) {
			throw new InvalidStockException(field, NLS.bind(Messages.StockRules_beyond,
					new Object[] { field.label(), value.toPlainString(), most.toPlainString() }));
		}
		return decimals(field, Measures.plain(value), FEW_DECIMALS);
	}

	private static BigDecimal decimals(StockField field, BigDecimal value, int most) {
		if (value.scale() > most) {
			throw new InvalidStockException(field, NLS.bind(Messages.StockRules_decimals,
					new Object[] { field.label(), value.toPlainString(), most }));
		}
		return value;
	}

	static void consistent(StockFamily family, Optional<BigDecimal> grammage, Optional<BasisWeight> basis,
			Optional<Caliper> caliper) {
		if (grammage.isEmpty() && basis.isEmpty() && caliper.isEmpty()) {
			throw new InvalidStockException(StockField.GRAMMAGE, Messages.StockRules_noMeasure);
		}
		if (grammage.isPresent() && basis.isPresent() && !isNear(grammage.get(), basis.get())) {
			throw mixedGrades(grammage.get(), basis.get());
		}
		Optional<BigDecimal> known = grammage.or(() -> basis.map(BasisWeight::grammage));
		if (known.isPresent() && caliper.isPresent() && (family == StockFamily.CARD || family == StockFamily.PAPER)) {
			bulk(known.get(), caliper.get());
		}
	}

	private static boolean isNear(BigDecimal grammage, BasisWeight basis) {
		BigDecimal off = basis.grammage().subtract(grammage).abs();
		return off.compareTo(grammage.multiply(ROUNDING)) <= 0;
	}

	private static InvalidStockException mixedGrades(BigDecimal grammage, BasisWeight basis) {
		Predicate<Grade> fits = grade -> {
			BigDecimal other = grade.grammage(basis.pounds());
			return other.compareTo(Measures.HEAVIEST) <= 0 && isNear(grammage, new BasisWeight(basis.pounds(), grade));
		};
		String hint = Arrays.stream(Grade.values()).filter(fits).findFirst()
				.map(grade -> ' ' + NLS.bind(Messages.StockRules_perhaps, new BasisWeight(basis.pounds(), grade)))
				.orElse("");
		return new InvalidStockException(StockField.BASIS_WEIGHT, NLS.bind(Messages.StockRules_mixed,
				new Object[] { basis, Measures.text(basis.grammage(), 1), grammage.toPlainString() }) + hint);
	}

	private static void bulk(BigDecimal grammage, Caliper caliper) {
		BigDecimal bulk = Bulk.of(caliper.thickness(), grammage).value();
		if (bulk.compareTo(LEAST_BULK) < 0 || bulk.compareTo(MOST_BULK) > 0) {
			throw new InvalidStockException(StockField.CALIPER,
					NLS.bind(Messages.StockRules_bulk, new Object[] { caliper.thickness().mm().toPlainString(),
							Measures.text(grammage, 1), Measures.text(bulk, 2) }));
		}
	}
}
