package org.frisket.material.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Trial;
import org.frisket.material.trials.Verdict;

/**
 * What the trials of a family say that were made with one setup and number of passes: where the blade comes through, where
 * it gets into the carrier, and what exposure and speed went well.
 */
final class FamilyFit {

	/** The middle of what went well at a measure. */
	record Usual(double exposure, double speed) {
	}

	private final DepthFit through;
	private final DepthFit carrier;
	private final TreeMap<Double, Usual> usual = new TreeMap<>();

	/**
	 * @param trials all of which tell a depth and have the measure; at least one
	 * @param step   of the machine's pressure
	 */
	FamilyFit(List<Trial> trials, Measure measure, double step) {
		int n = trials.size();
		double[] measures = new double[n];
		double[] pressures = new double[n];
		boolean[] came = new boolean[n];
		boolean[] cut = new boolean[n];
		for (int i = 0; i < n; i++) {
			Trial trial = trials.get(i);
			measures[i] = measure.value(trial.stock());
			pressures[i] = trial.settings().pressure();
			came[i] = trial.verdict().cutsThrough();
			cut[i] = trial.verdict() == Verdict.CARRIER_CUT;
		}
		int[] order = Depths.order(measures, pressures);
		through = new DepthFit(new Depths(measures, pressures, came, order), DepthFit.Ends.LEAST_REACHING, step);
		carrier = new DepthFit(new Depths(measures, pressures, cut, order), DepthFit.Ends.GREATEST_SPARING, step);
		usual(trials, measures);
	}

	private void usual(List<Trial> trials, double[] measures) {
		TreeMap<Double, List<Settings>> good = new TreeMap<>();
		for (int i = 0; i < measures.length; i++) {
			if (trials.get(i).verdict().isGood()) {
				good.computeIfAbsent(measures[i], key -> new ArrayList<>()).add(trials.get(i).settings());
			}
		}
		good.forEach((measure, all) -> usual.put(measure,
				new Usual(median(all.stream().mapToDouble(Settings::exposure).toArray()),
						median(all.stream().mapToDouble(Settings::speed).toArray()))));
	}

	/** The lower of two in the middle: a value that was tried. */
	private static double median(double[] values) {
		Arrays.sort(values);
		return values[(values.length - 1) / 2];
	}

	DepthFit through() {
		return through;
	}

	DepthFit carrier() {
		return carrier;
	}

	/** What went well at the tried measure nearest to this one; null if nothing ever did. */
	Usual usual(double measure) {
		var below = usual.floorEntry(measure);
		var above = usual.ceilingEntry(measure);
		if (below == null || above == null) {
			return below != null ? below.getValue() : above != null ? above.getValue() : null;
		}
		return measure - below.getKey() <= above.getKey() - measure ? below.getValue() : above.getValue();
	}

	/** Whether at a measure there is a pressure that comes through and spares the carrier. */
	boolean isOpen(double measure) {
		return through.pressure(measure) <= carrier.pressure(measure);
	}
}
