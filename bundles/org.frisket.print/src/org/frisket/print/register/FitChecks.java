package org.frisket.print.register;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Length;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.print.register.RegisterFinding.Severity;

/** What people do wrong with marks: the sheet on its face, marks measured in another order, one of them misread. */
final class FitChecks {

	/** Another reading must fit so many times better before anything is said. */
	private static final double FAR_BETTER = 4;
	/** Residuals below this share of the marks' spread come from measuring, not from a mix-up. */
	private static final double MIXED_UP = 0.02;
	private static final double AN_ORDER = 10;
	/** What is commonly asked of register in offset print, mm (a training page on print quality, not a standard). */
	private static final double USUAL_REGISTER = 0.1;
	private static final int DECIMALS = 3;

	private final Registration fit;
	/** What the marks are called. */
	private final List<Integer> numbers;
	private final Point centre;
	private final List<RegisterFinding> findings = new ArrayList<>();

	private FitChecks(Registration fit, List<Integer> numbers) {
		this.fit = fit;
		this.numbers = numbers;
		centre = Marks.centroid(fit.designed());
	}

	static List<RegisterFinding> of(Registration fit, List<Integer> numbers) {
		FitChecks checks = new FitChecks(fit, numbers);
		boolean mixed = checks.mirrored() | checks.pairing();
		if (!mixed) {
			checks.folded();
			checks.outlier();
		}
		checks.redundancy();
		checks.findings.sort(Comparator.comparing(RegisterFinding::severity));
		return checks.findings;
	}

	/** Judged by similarities, for richer fits follow a mirrored sheet without a murmur. */
	private boolean mirrored() {
		double direct = rms(MarkFit.turn(fit.designed(), fit.measured(), true));
		double reflected = rms(MarkFit.mirrored(fit.designed(), fit.measured()));
		if (isMixUp(direct) && reflected * FAR_BETTER < direct) {
			findings.add(RegisterFinding.measured("sheet-mirrored", Severity.BLOCKING, centre, direct, reflected,
					NLS.bind(Messages.FitChecks_mirrored, length(reflected), length(direct)), Messages.FitChecks_mirroredCure));
			return true;
		}
		return false;
	}

	private boolean pairing() {
		double direct = rms(MarkFit.turn(fit.designed(), fit.measured(), true));
		if (!isMixUp(direct)) {
			return false;
		}
		int[] order = Pairings.best(fit.designed(), fit.measured());
		List<Point> paired = Pairings.apply(order, fit.measured());
		double better = rms(MarkFit.turn(fit.designed(), paired, true), paired);
		if (better * FAR_BETTER >= direct) {
			return false;
		}
		StringBuilder words = new StringBuilder();
		for (int index : order) {
			words.append(words.isEmpty() ? "" : ", ").append(numbers.get(index));
		}
		findings.add(RegisterFinding.measured("marks-mispaired", Severity.BLOCKING, centre, direct, better,
				NLS.bind(Messages.FitChecks_mispaired, new Object[] { words, length(better), length(direct) }),
				Messages.FitChecks_mispairedCure));
		return true;
	}

	private boolean isMixUp(double rms) {
		return rms > MIXED_UP * Marks.spread(fit.measured());
	}

	/** A map that turns part of the sheet inside out fits any four marks. */
	private void folded() {
		if (fit.designed().stream().anyMatch(mark -> !(fit.map().weight(mark) > 0))) {
			findings.add(RegisterFinding.plain("sheet-folded", Severity.BLOCKING, centre, Messages.FitChecks_folded,
					Messages.FitChecks_foldedCure));
		}
	}

	private void outlier() {
		int marks = fit.designed().size();
		if (fit.kind().redundancy(marks - 1) < 1 || fit.max() < USUAL_REGISTER) {
			return;
		}
		int worst = -1;
		double least = Double.POSITIVE_INFINITY;
		for (int i = 0; i < marks; i++) {
			List<Point> designed = Marks.without(fit.designed(), i);
			List<Point> measured = Marks.without(fit.measured(), i);
			if (Marks.conditioning(designed) < Registration.LEAST_CONDITIONING && fit.kind() != FitKind.RIGID
					&& fit.kind() != FitKind.SIMILARITY) {
				continue;
			}
			double rms;
			try {
				rms = rms(MarkFit.of(fit.kind(), designed, measured), designed, measured);
			} catch (ArithmeticException open) {
				continue;
			}
			if (rms < least) {
				least = rms;
				worst = i;
			}
		}
		if (least * AN_ORDER < fit.rms()) {
			findings.add(RegisterFinding.measured("mark-off", Severity.CAUTION, fit.designed().get(worst), fit.rms(), least,
					NLS.bind(Messages.FitChecks_outlier, new Object[] { numbers.get(worst), length(fit.rms()), length(least) }),
					Messages.FitChecks_outlierCure));
		}
	}

	private void redundancy() {
		if (fit.redundancy() == 0) {
			findings.add(RegisterFinding.plain("no-redundancy", Severity.NOTE, centre, Messages.FitChecks_unproved,
					Messages.FitChecks_unprovedCure));
		}
	}

	private double rms(Transform map) {
		return rms(map, fit.measured());
	}

	private double rms(Transform map, List<Point> measured) {
		return rms(Projection.of(map), fit.designed(), measured);
	}

	private static double rms(Projection map, List<Point> designed, List<Point> measured) {
		double sum = 0;
		for (int i = 0; i < designed.size(); i++) {
			Point error = measured.get(i).minus(map.apply(designed.get(i)));
			sum += error.dot(error);
		}
		return Math.sqrt(sum / designed.size());
	}

	private static String length(double mm) {
		return Length.text(mm, DECIMALS);
	}
}
