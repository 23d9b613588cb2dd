package org.frisket.typography.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.typography.FontFace;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.TextSpan;

/**
 * The largest cap height at which a text fits into a box. Tracking and word spacing keep their millimetres; cap heights
 * of spans grow along. With a measure the lines are broken anew at every height.
 */
public final class BoxFit {

	private static final double LARGEST = 10_000;
	private static final double SMALLEST = 1e-3;
	private static final double FIRST_STEP = 1.0001;
	/** Of the cap height. */
	private static final double PRECISION = 1e-6;

	private BoxFit() {
	}

	/** @see #capHeight(String, FontFace, Setting, List, double, double, Monitor) */
	public static OptionalDouble capHeight(String text, FontFace face, Setting setting, double width, double height,
			Monitor monitor) {
		return capHeight(text, face, setting, List.of(), width, height, monitor);
	}

	/**
	 * @param width  of the box in mm, into which the outlines are to go
	 * @param height of the box in mm
	 * @return the cap height in mm to within a millionth, never too large; empty if the text leaves no mark or fits at
	 *         no height, as where the tracking alone is wider than the box
	 * @throws IllegalArgumentException unless the sides are positive and finite
	 */
	public static OptionalDouble capHeight(String text, FontFace face, Setting setting, List<TextSpan> spans,
			double width, double height, Monitor monitor) {
		if (!(width > 0) || !(height > 0) || !Double.isFinite(width) || !Double.isFinite(height)) {
			throw new IllegalArgumentException("a box of " + width + " × " + height + " mm");
		}
		Trial trial = new Trial(text, face, setting, spans, width, height, monitor);
		SetText set = trial.at(setting.capHeight());
		if (set.letters().isEmpty()) {
			return OptionalDouble.empty();
		}
		double guess = Math.min(LARGEST, setting.capHeight() * trial.room(set));
		return trial.fits(guess) ? between(trial, guess, trial.firstUnfit(guess))
				: between(trial, trial.firstFit(guess), guess);
	}

	/** @param low fits, or 0; {@code high} does not, or is the largest that is tried */
	private static OptionalDouble between(Trial trial, double low, double high) {
		double fits = low;
		double unfit = high;
		while (fits > 0 && unfit - fits > PRECISION * unfit / 2) {
			double middle = (fits + unfit) / 2;
			if (trial.fits(middle)) {
				fits = middle;
			} else {
				unfit = middle;
			}
		}
		return fits > 0 ? OptionalDouble.of(fits) : OptionalDouble.empty();
	}

	private record Trial(String text, FontFace face, Setting setting, List<TextSpan> spans, double width, double height,
			Monitor monitor) {

		SetText at(double capHeight) {
			monitor.check();
			double factor = capHeight / setting.capHeight();
			List<TextSpan> grown = new ArrayList<>();
			for (TextSpan span : spans) {
				OptionalDouble own = span.capHeight().isPresent()
						? OptionalDouble.of(span.capHeight().getAsDouble() * factor) : span.capHeight();
				grown.add(new TextSpan(span.start(), span.end(), span.face(), own, span.features()));
			}
			return TextSetter.set(text, face, setting.withCapHeight(capHeight), grown, Monitor.NONE);
		}

		/** In growing steps upwards; the first guess is nearly always very near. */
		double firstUnfit(double from) {
			double factor = FIRST_STEP;
			double at = from;
			while (at < LARGEST && fits(at)) {
				at = Math.min(LARGEST, at * factor);
				factor *= factor;
			}
			return at;
		}

		/** In growing steps downwards; 0 if nothing fits. */
		double firstFit(double from) {
			double factor = FIRST_STEP;
			double at = from;
			while (at > SMALLEST && !fits(at)) {
				at /= factor;
				factor *= factor;
			}
			return at > SMALLEST ? at : 0;
		}

		boolean fits(double capHeight) {
			return room(at(capHeight)) >= 1;
		}

		/** By what it could be multiplied to fill the box, were all of it to grow alike. */
		double room(SetText set) {
			Bounds bounds = set.bounds();
			return Math.min(width / bounds.width(), height / bounds.height());
		}
	}
}
