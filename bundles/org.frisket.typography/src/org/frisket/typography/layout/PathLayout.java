package org.frisket.typography.layout;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Transform;
import org.frisket.geometry.lines.ArcLength;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextLine;

/**
 * Sets a text along a contour. Further lines keep their distance from the first at right angles to the contour, and
 * are measured along it too, so that they stand the closer the more it bends towards them.
 */
public final class PathLayout {

	/**
	 * @param start    where on the path the text starts, has its middle or ends, as its alignment is left, centre or
	 *                 right: mm from the path's start, or from its end if reversed; may be negative
	 * @param reversed whether the text runs against the path
	 * @param hanging  whether the letters hang below the path by their cap height instead of standing on it
	 */
	public record Options(double start, boolean reversed, boolean hanging) {

		public static final Options PLAIN = new Options(0, false, false);

		/** @throws IllegalArgumentException unless the start is finite */
		public Options {
			if (!Double.isFinite(start)) {
				throw new IllegalArgumentException("a start at " + start);
			}
		}
	}

	private static final double ROUNDING = 1e-9;

	private PathLayout() {
	}

	/** @throws IllegalArgumentException if the path has no length */
	public static Laid along(SetText text, Contour path, Options options) {
		Bent bent = bend(text.letters(), text.lines(), text.setting(), path, options);
		return new Laid(text.withLetters(bent.letters()), bent.overflowing(), bent.needed(), bent.available());
	}

	/** Letters of any kind that were set straight. @see #along(SetText, Contour, Options) */
	public static Bent bend(List<Letter> straight, List<TextLine> lines, Setting setting, Contour path,
			Options options) {
		ArcLength curve = new ArcLength(options.reversed() ? path.reversed() : path);
		double block = ArcLayout.blockWidth(lines, setting);
		double shift = options.start() - ArcLayout.anchor(setting.alignment(), block);
		double drop = options.hanging() ? setting.capHeight() : 0;
		List<Letter> letters = new ArrayList<>();
		List<Integer> overflowing = new ArrayList<>();
		for (Letter letter : straight) {
			TextLine line = lines.get(letter.line());
			double from = shift + letter.origin().x();
			if (overflows(curve, from, from + letter.advance(), shift + line.left())) {
				overflowing.add(letters.size());
			}
			double middle = letter.origin().x() + letter.advance() / 2;
			ArcLength.Place place = curve.at(shift + middle);
			double turn = Math.atan2(place.direction().y(), place.direction().x());
			letters.add(letter.transformed(Transform.translation(-middle, drop).then(Transform.rotation(turn))
					.then(Transform.translation(place.point().x(), place.point().y()))));
		}
		double needed = lines.stream().mapToDouble(TextLine::width).max().orElse(0);
		double available = curve.isClosed() ? curve.length()
				: Math.max(0, curve.length() - Math.max(0, options.start()));
		return new Bent(letters, overflowing, needed, available);
	}

	private static boolean overflows(ArcLength curve, double from, double to, double lineStart) {
		double slack = ROUNDING * curve.length();
		return curve.isClosed() ? to - lineStart > curve.length() + slack
				: from < -slack || to > curve.length() + slack;
	}
}
