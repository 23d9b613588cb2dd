package org.frisket.typography.layout;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Transform;
import org.frisket.typography.Alignment;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextLine;

/** Sets a text on an arc. Further lines stand on circles with the same middle, below the first to the reader. */
public final class ArcLayout {

	private ArcLayout() {
	}

	/** Rounding of sums must not make a full circle overflow. */
	private static final double ROUNDING = 1e-9;

	/**
	 * Every line is measured along its own baseline.
	 *
	 * @throws IllegalArgumentException if a baseline would have no radius left
	 */
	public static Laid along(SetText text, Arc arc) {
		Bent bent = bend(text.letters(), text.lines(), text.setting(), arc);
		return new Laid(text.withLetters(bent.letters()), bent.overflowing(), bent.needed(), bent.available());
	}

	/** Letters of any kind that were set straight. @see #along(SetText, Arc) */
	public static Bent bend(List<Letter> straight, List<TextLine> lines, Setting setting, Arc arc) {
		boolean clockwise = arc.direction() == Arc.Direction.CLOCKWISE;
		double first = arc.baselineRadius(setting.capHeight());
		double anchor = anchor(setting.alignment(), blockWidth(lines, setting));
		double needed = 0;
		double available = 2 * Math.PI * first;
		for (int i = 0; i < lines.size(); i++) {
			double radius = radius(first, lines.get(i), clockwise);
			if (!(radius > 0)) {
				throw new IllegalArgumentException("the baseline of line " + (i + 1) + " has no radius left");
			}
			if (lines.get(i).width() > needed) {
				needed = lines.get(i).width();
				available = 2 * Math.PI * radius;
			}
		}
		List<Letter> letters = new ArrayList<>();
		List<Integer> overflowing = new ArrayList<>();
		for (Letter letter : straight) {
			TextLine line = lines.get(letter.line());
			double radius = radius(first, line, clockwise);
			double middle = letter.origin().x() + letter.advance() / 2;
			double along = (middle - anchor) / radius;
			double angle = Math.toRadians(arc.startAngle()) + (clockwise ? along : -along);
			if (letter.origin().x() + letter.advance() - line.left() > 2 * Math.PI * radius * (1 + ROUNDING)) {
				overflowing.add(letters.size());
			}
			letters.add(letter.transformed(place(middle, line.baseline(), radius, angle, clockwise)));
		}
		return new Bent(letters, overflowing, needed, available);
	}

	private static double radius(double first, TextLine line, boolean clockwise) {
		return first + (clockwise ? -line.baseline() : line.baseline());
	}

	/** With the heads inwards the letter is upright at the bottom of the circle. */
	private static Transform place(double middle, double baseline, double radius, double angle, boolean clockwise) {
		double turn = clockwise ? angle : angle - Math.PI;
		return Transform.translation(-middle, -baseline).then(Transform.rotation(turn))
				.then(Transform.translation(radius * Math.sin(angle), -radius * Math.cos(angle)));
	}

	static double blockWidth(List<TextLine> lines, Setting setting) {
		double widest = lines.stream().mapToDouble(l -> l.left() + l.width()).max().orElse(0);
		return Math.max(widest, setting.measure());
	}

	/** The x that goes to the start of the curve. */
	static double anchor(Alignment alignment, double block) {
		return switch (alignment) {
		case LEFT, JUSTIFY -> 0;
		case CENTRE -> block / 2;
		case RIGHT -> block;
		};
	}
}
