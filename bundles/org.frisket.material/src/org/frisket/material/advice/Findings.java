package org.frisket.material.advice;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;

/** What trials say, in the user's language. */
record Findings(Measure measure, double value, FamilyFit fit, int passes, Advice.PressureWindow window,
		double pressure) {

	static String leftOut(int dull, int torn) {
		return NLS.bind(Messages.Findings_leftOut, dull, torn);
	}

	List<String> reasons() {
		List<String> reasons = new ArrayList<>();
		DepthFit through = fit.through();
		reasons.add(NLS.bind(Messages.Findings_trials, new Object[] { through.tries(),
				measure.text(through.leastMeasure()), measure.text(through.greatestMeasure()), passes }));
		if (!through.covers(value)) {
			reasons.add(NLS.bind(value > through.greatestMeasure() ? Messages.Findings_above : Messages.Findings_below,
					measure.text(value),
					measure.text(value > through.greatestMeasure() ? through.greatestMeasure()
							: through.leastMeasure())));
		}
		reasons.add(NLS.bind(window.isOpen() ? Messages.Findings_window : Messages.Findings_closed,
				new Object[] { measure.text(value), plain(window.from()), plain(window.to()) }));
		interval(reasons, window.fromLeast(), window.fromMost(), Messages.Findings_throughInterval,
				Messages.Findings_throughFrom, Messages.Findings_throughTo, Messages.Findings_throughUnknown);
		return reasons;
	}

	private static void interval(List<String> reasons, double least, double most, String both, String from, String to,
			String none) {
		boolean below = Double.isFinite(least);
		boolean above = Double.isFinite(most);
		reasons.add(below && above ? NLS.bind(both, plain(Math.min(least, most)), plain(Math.max(least, most)))
				: below ? NLS.bind(from, plain(least)) : above ? NLS.bind(to, plain(most)) : none);
	}

	private static String plain(double pressure) {
		return Measure.plain(pressure, 2);
	}
}
