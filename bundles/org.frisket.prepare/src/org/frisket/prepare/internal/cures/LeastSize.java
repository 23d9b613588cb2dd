package org.frisket.prepare.internal.cures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.EditGroup;
import org.frisket.editing.arranging.TransformElements;
import org.frisket.editing.shapes.ChangeMat;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.geometry.Point;
import org.frisket.model.Element;
import org.frisket.model.Mat;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Trial;

/**
 * The least size at which all that is too small on an element is large enough. Thickness grows with the size, so that
 * the first guess is mostly near; joined letters and mats, which do not grow in every part, are tried again from there.
 */
final class LeastSize {

	private static final double LARGEST = 2000;
	/** A joint that is thin at first may be sound soon, so that its measure is no guess. */
	private static final double GROWTH = 1.5;
	private static final int TRIES = 6;
	/** How near the first guess is, which rests on a measure within the tolerance. */
	private static final double GUESS = 0.95;
	/** Sizes are given in tenths. */
	private static final double STEPS = 10;

	private LeastSize() {
	}

	/** Worked out once for all findings of this kind on the element. */
	static List<Cure> cures(Finding finding, Trial trial) {
		record Key(String element, String kind) {
		}
		return trial.once(new Key(finding.element(), finding.id()), () -> {
			Element element = trial.element(finding).orElse(null);
			if (finding.measured().isEmpty() || finding.limit().isEmpty()) {
				return List.of();
			}
			double limit = finding.limit().getAsDouble();
			if (element instanceof Wording wording) {
				return (wording.isJoined() ? joined(finding, trial, wording, limit) : search(finding, trial,
						wording.getHeight(), least -> limit / least, 0, height -> height(finding, height))).stream()
						.toList();
			}
			if (element instanceof Mat mat) {
				return ofMat(finding, trial, mat, limit);
			}
			if (!(element instanceof Outline)) {
				return List.of();
			}
			Point centre = trial.prepared(finding).map(PreparedElement::bounds).orElseThrow().centre();
			return search(finding, trial, 100, least -> limit / least, 0,
					percent -> Cure.of(NLS.bind(Messages.LeastSize_scale, Figures.number(percent, 1)), finding.element(),
							Outline.class, outline -> TransformElements.scale(List.of(outline), percent / 100,
									percent / 100, centre.x(), centre.y())))
					.stream().toList();
		});
	}

	private static Cure height(Finding finding, double height) {
		return Cure.of(NLS.bind(Messages.LeastSize_height, Figures.length(height, 1)), finding.element(), Wording.class,
				w -> ChangeWording.height(w, height));
	}

	/** Where joined letters meet, height helps little: there they have to overlap by more. */
	private static Optional<Cure> joined(Finding finding, Trial trial, Wording wording, double limit) {
		double from = wording.getHeight();
		double touch = Math.max(wording.getTouch(), roundedUp(limit));
		return search(finding, trial, from, least -> Math.min(limit / least, GROWTH), 0,
				height -> joined(finding, height, touch))
				.or(() -> search(finding, trial, from, least -> limit / least, 0,
						height -> joined(finding, height, roundedUp(wording.getTouch() * height / from))));
	}

	private static Cure joined(Finding finding, double height, double touch) {
		return Cure.of(NLS.bind(Messages.LeastSize_joined, Figures.length(height, 1), Figures.length(touch, 1)),
				finding.element(), Wording.class, w -> new EditGroup(Messages.LeastSize_heightAndTouch,
						List.of(ChangeWording.height(w, height), ChangeWording.join(w, touch))));
	}

	private static List<Cure> ofMat(Finding finding, Trial trial, Mat mat, double limit) {
		List<Cure> cures = new ArrayList<>();
		search(finding, trial, mat.getDistance(), least -> 1, (limit - smallest(finding, trial)) / 2,
				distance -> Cure.of(NLS.bind(Messages.MatCures_distance, Figures.length(distance, 1)), finding.element(),
						Mat.class, m -> ChangeMat.distance(List.of(m), distance)))
				.ifPresent(cures::add);
		double radius = roundedUp(limit / 2 + trial.tolerance().mm());
		if (radius > mat.getSmoothing()) {
			cures.add(Cure.of(NLS.bind(Messages.LeastSize_smooth, Figures.length(radius, 1)), finding.element(), Mat.class,
					m -> ChangeMat.smoothing(List.of(m), radius)));
		}
		return cures;
	}

	private static double smallest(Finding finding, Trial trial) {
		return least(trial.before(finding.element()), finding.id());
	}

	/** The smallest measure of the findings of a kind; endless if there are none. */
	static double least(List<Finding> findings, String kind) {
		return findings.stream().filter(f -> f.id().equals(kind)).mapToDouble(f -> f.measured().orElse(Double.NaN))
				.min().orElse(Double.POSITIVE_INFINITY);
	}

	/**
	 * @param factor from the smallest measure to how many times larger it has to be made
	 * @param more   what is added at each try
	 */
	private static Optional<Cure> search(Finding finding, Trial trial, double from, DoubleUnaryOperator factor,
			double more, DoubleFunction<Cure> cure) {
		double smallest = smallest(finding, trial);
		double tooSmall = from;
		for (int i = 0; i < TRIES; i++) {
			trial.monitor().check();
			double size = Math.max(roundedUp(tooSmall * factor.applyAsDouble(smallest) + more), next(tooSmall));
			if (!(size <= LARGEST)) {
				return Optional.empty();
			}
			Cure tried = cure.apply(size);
			Optional<List<Finding>> after = trial.after(tried, finding.element());
			if (after.isEmpty()) {
				return Optional.empty();
			}
			smallest = least(after.get(), finding.id());
			if (smallest == Double.POSITIVE_INFINITY) {
				return Optional.of(least(finding, trial, Math.max(tooSmall, GUESS * size), size, cure));
			}
			tooSmall = size;
		}
		return Optional.empty();
	}

	/** The least size between one that is too small and one that is not. */
	private static Cure least(Finding finding, Trial trial, double tooSmall, double enough,
			DoubleFunction<Cure> cure) {
		double low = tooSmall;
		double high = enough;
		while (next(low) < high) {
			double middle = roundedUp((low + high) / 2);
			if (middle >= high) {
				break;
			}
			boolean fits = trial.after(cure.apply(middle), finding.element())
					.map(after -> least(after, finding.id()) == Double.POSITIVE_INFINITY).orElse(false);
			if (fits) {
				high = middle;
			} else {
				low = middle;
			}
		}
		return cure.apply(high);
	}

	/** Not to the next tenth for a digit that is only rounding. */
	private static double roundedUp(double value) {
		return Math.ceil(value * STEPS - 1e-6) / STEPS;
	}

	private static double next(double value) {
		return Math.rint(Math.floor(value * STEPS + 1e-6) + 1) / STEPS;
	}
}
