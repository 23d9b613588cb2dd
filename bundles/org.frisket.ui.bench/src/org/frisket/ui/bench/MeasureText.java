package org.frisket.ui.bench;

import java.text.NumberFormat;
import java.util.OptionalDouble;

import org.frisket.prepare.Finding;
import org.frisket.prepare.Unit;
import org.frisket.ui.LengthText;

/** What a finding measured, as the screen writes it; an empty text where nothing was. */
public final class MeasureText {

	private MeasureText() {
	}

	public static String measured(Finding finding) {
		return of(finding.measured(), finding.unit());
	}

	public static String limit(Finding finding) {
		return of(finding.limit(), finding.unit());
	}

	private static String of(OptionalDouble value, Unit unit) {
		if (value.isEmpty()) {
			return ""; //$NON-NLS-1$
		}
		if (unit == Unit.MM) {
			return LengthText.of(value.getAsDouble());
		}
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMaximumFractionDigits(1);
		return format.format(value.getAsDouble()) + (unit == Unit.DPI ? " " : "") + unit.symbol(); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
