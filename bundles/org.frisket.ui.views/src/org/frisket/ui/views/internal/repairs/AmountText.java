package org.frisket.ui.views.internal.repairs;

import java.text.NumberFormat;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.repair.Mend;
import org.frisket.ui.LengthUnit;

/** How much was put right, in the unit of the studio; finer than sizes, for a repair is often of hundredths. */
final class AmountText {

	private static final int FINER = 2;

	private AmountText() {
	}

	static String of(Mend mend) {
		return switch (mend.unit()) {
		case "mm" -> length(mend.amount()); //$NON-NLS-1$
		case "mm2" -> area(mend.amount()); //$NON-NLS-1$
		case "deg" -> NLS.bind(Messages.AmountText_degrees, number(mend.amount(), FINER)); //$NON-NLS-1$
		default -> number(mend.amount(), 0);
		};
	}

	/** @param mm the length */
	static String length(double mm) {
		LengthUnit unit = LengthUnit.shown();
		return NLS.bind(Messages.AmountText_length, number(unit.fromMillimetres(mm), unit.decimals() + FINER),
				unit.symbol());
	}

	private static String area(double squareMm) {
		LengthUnit unit = LengthUnit.shown();
		double perMm = unit.fromMillimetres(1);
		return NLS.bind(Messages.AmountText_area, number(squareMm * perMm * perMm, 2 * FINER), unit.symbol());
	}

	private static String number(double value, int decimals) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMaximumFractionDigits(decimals);
		return format.format(value);
	}
}
