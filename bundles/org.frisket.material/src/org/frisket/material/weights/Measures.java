package org.frisket.material.weights;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.eclipse.osgi.util.NLS;

/** What numbers of paper can be, and how they are written. */
public final class Measures {

	/** In g/m². Nothing a studio cuts is heavier; beyond it a slip of the finger is likelier. */
	public static final BigDecimal HEAVIEST = new BigDecimal(5000);
	/** In mm. */
	public static final BigDecimal THICKEST = new BigDecimal(50);

	private Measures() {
	}

	/** @throws MeasureException unless it is a grammage in g/m² that a sheet can have */
	public static BigDecimal grammage(BigDecimal grammage) {
		return between(grammage, HEAVIEST, Messages.Measures_grammage, "g/m²");
	}

	/** @throws MeasureException unless it is a caliper in mm that a sheet can have */
	public static BigDecimal caliper(BigDecimal mm) {
		return between(mm, THICKEST, Messages.Measures_caliper, "mm");
	}

	private static BigDecimal between(BigDecimal value, BigDecimal greatest, String what, String unit) {
		above0(value, what, unit);
		if (value.compareTo(greatest) > 0) {
			throw new MeasureException(NLS.bind(Messages.Measures_beyond,
					new Object[] { what, text(value, 3), unit, text(greatest, 3) }));
		}
		return plain(value);
	}

	/** @throws MeasureException if it is zero or less */
	static BigDecimal above0(BigDecimal value, String what, String unit) {
		if (value.signum() <= 0) {
			throw new MeasureException(NLS.bind(Messages.Measures_notAbove0, new Object[] { what, text(value, 6), unit }));
		}
		return value;
	}

	/** The same number without zeros at its end, so that equal numbers are equal values. */
	public static BigDecimal plain(BigDecimal value) {
		BigDecimal stripped = value.stripTrailingZeros();
		return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
	}

	/** With at most so many decimals, and none that say nothing. */
	public static String text(BigDecimal value, int decimals) {
		return rounded(value, decimals).toPlainString();
	}

	/** To at most so many decimals. */
	public static BigDecimal rounded(BigDecimal value, int decimals) {
		return plain(value.setScale(decimals, RoundingMode.HALF_EVEN));
	}
}
