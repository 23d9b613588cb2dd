package org.frisket.print.internal.drawn;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How large an SVG is, in pixels of CSS, of which 96 are an inch (CSS 2.1, 4.3.2).
 *
 * @param told whether the file says it, so that nothing had to be assumed
 */
record SvgSize(double width, double height, boolean told) {

	private static final double PER_INCH = 96;
	private static final double MM_PER_INCH = 25.4;
	/** Of what says nothing at all (CSS 2.1, 10.3.2 and 10.6.2). */
	private static final SvgSize NOTHING_SAID = new SvgSize(300, 150, false);
	private static final Map<String, Double> UNITS = Map.of("", 1.0, "px", 1.0, "in", PER_INCH, "pt", PER_INCH / 72, "pc",
			PER_INCH / 6, "mm", PER_INCH / MM_PER_INCH, "cm", 10 * PER_INCH / MM_PER_INCH);
	private static final Pattern LENGTH = Pattern.compile(
			"([+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?)\\s*([a-z]*)");

	/** From the attributes of the root; null for those that it has not. A width in percent, or of text, says nothing. */
	static SvgSize of(String width, String height, String viewBox) {
		double across = length(width);
		double down = length(height);
		double[] box = viewBox(viewBox);
		if (across > 0 && down > 0) {
			return new SvgSize(across, down, true);
		} else if (box == null) {
			return across > 0 ? new SvgSize(across, NOTHING_SAID.height, false)
					: down > 0 ? new SvgSize(NOTHING_SAID.width, down, false) : NOTHING_SAID;
		} else if (across > 0) {
			return new SvgSize(across, across * box[1] / box[0], true);
		} else if (down > 0) {
			return new SvgSize(down * box[0] / box[1], down, true);
		}
		return new SvgSize(box[0], box[1], false);
	}

	static double mm(double pixels) {
		return pixels * MM_PER_INCH / PER_INCH;
	}

	/** In pixels; 0 for none. */
	private static double length(String text) {
		Matcher matcher = text == null ? null : LENGTH.matcher(text.strip());
		Double unit = matcher == null || !matcher.matches() ? null : UNITS.get(matcher.group(2));
		return unit == null ? 0 : Double.parseDouble(matcher.group(1)) * unit;
	}

	/** Width and height; null for none. */
	private static double[] viewBox(String text) {
		String[] words = text == null ? new String[0] : text.strip().split("[\\s,]+");
		if (words.length != 4) {
			return null;
		}
		double[] box = { length(words[2]), length(words[3]) };
		return box[0] > 0 && box[1] > 0 ? box : null;
	}
}
