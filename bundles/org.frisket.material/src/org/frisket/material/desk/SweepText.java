package org.frisket.material.desk;

import org.frisket.material.tools.NativeScale;
import org.frisket.material.trials.Parameter;
import org.frisket.material.trials.Sweep;

/** The values of one parameter as they are typed: from, to, and the step between. */
public record SweepText(Parameter parameter, String from, String to, String step) {

	/** Values of a sweep that nobody has typed yet, about one that is advised. */
	static SweepText about(Parameter parameter, double value, NativeScale scale, int values) {
		double step = Math.max(scale.step(), Math.rint((scale.most() - scale.least()) / 20 / scale.step()) * scale.step());
		double from = scale.nearest(Math.max(scale.least(), value - step * ((values - 1) / 2)));
		double to = scale.atMost(from + step * (values - 1));
		return new SweepText(parameter, Sweep.plain(from), Sweep.plain(to), Sweep.plain(step));
	}

	static SweepText passes(int most) {
		return new SweepText(Parameter.PASSES, "1", Integer.toString(Math.min(3, most)), "1");
	}

	/** Blades are set by tenths of a millimetre; common practice, no source. */
	static SweepText exposure(double about) {
		double from = Math.max(0.1, Math.rint(about * 10) / 10 - 0.1);
		return new SweepText(Parameter.EXPOSURE, Sweep.plain(from), Sweep.plain(from + 0.3), "0.1");
	}
}
