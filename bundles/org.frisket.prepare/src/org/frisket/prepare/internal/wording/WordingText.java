package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Flow;
import org.frisket.model.Wording;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Severity;
import org.frisket.prepare.internal.Shape;
import org.frisket.typography.Alignment;
import org.frisket.typography.CurveJoiner;
import org.frisket.typography.Joiner;
import org.frisket.typography.Letter;
import org.frisket.typography.Nudge;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.StackJoiner;
import org.frisket.typography.StackSetter;
import org.frisket.typography.TextSetter;
import org.frisket.typography.TextSpan;
import org.frisket.typography.layout.BoxFit;
import org.frisket.typography.layout.Laid;

/**
 * The letters of a wording at their places: set, joined, nudged, bent.
 *
 * @param set      joined but neither nudged nor bent
 * @param straight not bent yet
 * @param placed   where they stand in the end
 * @param curve    that they were bent to
 */
public record WordingText(SetText set, SetText straight, SetText placed, Optional<TextCurve> curve,
		List<Shape.Remark> remarks) {

	/** Those of the placed letters that have an inside. */
	public SetText outlined() {
		return without(placed);
	}

	/** The same letters as they were set. */
	public SetText outlinedSet() {
		return without(set);
	}

	private static SetText without(SetText text) {
		return hasStrokes(text) ? text.withLetters(text.letters().stream()
				.filter(letter -> !text.faceOf(letter).isStroke()).toList()) : text;
	}

	private static boolean hasStrokes(SetText text) {
		return text.letters().stream().anyMatch(letter -> text.faceOf(letter).isStroke());
	}

	/** Those of the placed letters that are single lines. */
	public List<Letter> strokes() {
		return placed.letters().stream().filter(letter -> placed.faceOf(letter).isStroke()).toList();
	}

	/** @param words memory of what became of words before */
	public static WordingText of(WordingSource source, Memory words, Tolerance tolerance, Monitor monitor) {
		List<Shape.Remark> remarks = new ArrayList<>();
		SetText text = set(source, remarks, monitor);
		Optional<TextCurve> curve = TextCurve.of(source).filter(found -> fits(found, text, remarks));
		if (source.wording().getFlow() == Flow.ARC && !(source.wording().getArcRadius() > 0)) {
			remarks.add(tooTight());
		}
		// lines have no edges that could overlap
		SetText joined = source.wording().isJoined() && !hasStrokes(text)
				? joined(text, source.wording(), curve, words, tolerance, monitor)
				: text;
		SetText nudged = Nudge.apply(joined, source.nudges());
		if (curve.isEmpty()) {
			return new WordingText(joined, nudged, nudged, curve, remarks);
		}
		Laid laid = curve.get().lay(nudged);
		if (!laid.overflowing().isEmpty()) {
			remarks.add(overflow(laid));
		}
		return new WordingText(joined, nudged, laid.text(), curve, remarks);
	}

	private static SetText set(WordingSource source, List<Shape.Remark> remarks, Monitor monitor) {
		Wording wording = source.wording();
		Setting setting = setting(source);
		if (wording.getFlow() == Flow.STACKED) {
			return StackSetter.set(wording.getText(), source.face(), setting, source.spans(), monitor);
		}
		if (wording.getFlow() != Flow.STRAIGHT || !(wording.getBoxWidth() > 0) || !(wording.getBoxHeight() > 0)) {
			return TextSetter.set(wording.getText(), source.face(), setting, source.spans(), monitor);
		}
		double edge = 2 * Math.max(0, wording.getEmbolden());
		OptionalDouble fitting = wording.getBoxWidth() > edge && wording.getBoxHeight() > edge
				? BoxFit.capHeight(wording.getText(), source.face(), setting, source.spans(),
						wording.getBoxWidth() - edge, wording.getBoxHeight() - edge, monitor)
				: OptionalDouble.empty();
		if (fitting.isEmpty() && !wording.getText().isBlank()) {
			remarks.add(new Shape.Remark("box-too-small", Severity.CAUTION, Point.ORIGIN,
					Messages.WordingText_box, Messages.WordingText_boxCure));
		}
		double height = fitting.orElse(setting.capHeight());
		double factor = height / setting.capHeight();
		List<TextSpan> spans = source.spans().stream().map(span -> new TextSpan(span.start(), span.end(), span.face(),
				span.capHeight().isPresent() ? OptionalDouble.of(factor * span.capHeight().getAsDouble())
						: OptionalDouble.empty(),
				span.features())).toList();
		return TextSetter.set(wording.getText(), source.face(), setting.withCapHeight(height), spans, monitor);
	}

	private static Setting setting(WordingSource source) {
		Wording wording = source.wording();
		Alignment alignment = switch (wording.getAlignment()) {
		case LEFT -> Alignment.LEFT;
		case CENTRE -> Alignment.CENTRE;
		case RIGHT -> Alignment.RIGHT;
		case JUSTIFY -> Alignment.JUSTIFY;
		};
		return Setting.ofCapHeight(wording.getHeight()).withLineSpacing(wording.getLineSpacing() / Setting.LINE_DISTANCE)
				.withTracking(wording.getTracking()).withAlignment(alignment).withKerning(wording.isKerning())
				.withLigatures(wording.isLigatures()).withWordSpacing(wording.getWordSpacing())
				.withMeasure(Math.max(0, wording.getMeasure())).withFeatures(source.features());
	}

	private static SetText joined(SetText text, Wording wording, Optional<TextCurve> curve, Memory words,
			Tolerance tolerance, Monitor monitor) {
		if (wording.getFlow() == Flow.STACKED) {
			return StackJoiner.join(text, wording.getTouch(), false, tolerance, words, monitor).text();
		}
		return curve.map(bend -> CurveJoiner.join(text, straight -> bend.lay(straight).text(), wording.getTouch(), false,
				tolerance, words, monitor)).orElseGet(() -> Joiner.join(text, wording.getTouch(), false, tolerance, words, monitor)).text();
	}

	private static boolean fits(TextCurve curve, SetText text, List<Shape.Remark> remarks) {
		try {
			curve.lay(text);
			return true;
		} catch (IllegalArgumentException e) {
			remarks.add(tooTight());
			return false;
		}
	}

	private static Shape.Remark tooTight() {
		return new Shape.Remark("arc-too-tight", Severity.BLOCKING, Point.ORIGIN,
				Messages.WordingText_arc, Messages.WordingText_arcCure);
	}

	private static Shape.Remark overflow(Laid laid) {
		Point place = laid.text().letters().get(laid.overflowing().get(0)).outline().bounds().centre();
		String message = laid.needed() > laid.available()
				? NLS.bind(Messages.WordingText_long, Figures.length(laid.needed(), 1),
						Figures.length(laid.available(), 1))
				: Messages.WordingText_beyond;
		return new Shape.Remark("text-overflows", Severity.CAUTION, place, message,
				Messages.WordingText_longCure);
	}
}
