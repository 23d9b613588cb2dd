package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.typography.Letter;

/**
 * The letters of a text as they come to stand one after the other. Those from one place of its own to the next are a
 * chunk, which is anchored as a whole: SVG 1.1, section 10.9.1.
 */
final class LetterRow {

	private final List<Contour> all = new ArrayList<>();
	private final List<Letter> chunk = new ArrayList<>();
	/** What the chunk runs along; null for a straight line. */
	private TextTrack track;
	private String anchor = "start";
	/** Where the chunk begins and where the pen is: on the sheet, or along the track and below it. */
	private double start;
	private double x;
	private double y;
	/** By how much the pen was moved down since it was put somewhere. */
	private double lowered;
	/** Width of the blanks that the chunk ends with; they count for nothing at the end of a line. */
	private double blanks;
	/** Whether nothing was set since the pen was put somewhere. */
	private boolean untouched = true;
	private boolean afterBlank = true;

	/** Puts the pen elsewhere; what is null stays. Along a path there is no place of its own across it. */
	void moveTo(Double newX, Double newY) {
		Double across = track == null ? newY : null;
		if (newX != null || across != null) {
			finish(false);
			x = newX == null ? x : newX;
			y = across == null ? y : across;
			start = x;
			lowered = 0;
			untouched = true;
		}
	}

	/** Moves the pen on. */
	void moveBy(double dx, double dy, String ownAnchor) {
		x += dx;
		y += dy;
		lowered += dy;
		if (chunk.isEmpty()) {
			anchor = ownAnchor;
			start = x;
		}
	}

	/** Sets letters from the pen on. */
	void set(List<Letter> letters, double advance, double trailingBlanks) {
		letters.forEach(letter -> chunk.add(letter.movedBy(x, y)));
		x += advance;
		blanks = trailingBlanks;
		untouched = false;
	}

	/** From here on along a path. A place of the text that nothing was set at yet is meant along the path. */
	void enter(TextTrack newTrack, String ownAnchor) {
		double along = untouched ? x : 0;
		double below = untouched ? lowered : 0;
		finish(true);
		track = newTrack;
		anchor = ownAnchor;
		x = along;
		y = below;
		start = x;
	}

	/** The path is at its end. */
	void leave(String ownAnchor) {
		Point end = track.end();
		finish(true);
		track = null;
		anchor = ownAnchor;
		x = end.x();
		y = end.y();
		start = x;
		lowered = 0;
		untouched = false;
	}

	private void finish(boolean atTheEnd) {
		double width = x - start - (atTheEnd ? blanks : 0);
		double shift = switch (anchor) {
		case "middle" -> -width / 2;
		case "end" -> -width;
		default -> 0;
		};
		for (Letter letter : chunk) {
			Letter anchored = letter.movedBy(shift, 0);
			Outline placed = track == null ? anchored.outline() : track.placed(anchored, anchor);
			if (placed != null) {
				all.addAll(placed.contours());
			}
		}
		chunk.clear();
		x += shift;
		start = x;
		blanks = 0;
	}

	/** Runs of blanks are one blank, none at the beginning: SVG 1.1, section 10.15. */
	String collapsed(String text, boolean preserve) {
		if (preserve) {
			afterBlank = false;
			return text.replaceAll("[\\r\\n\\t]", " ");
		}
		StringBuilder out = new StringBuilder();
		for (char c : text.toCharArray()) {
			boolean blank = c == ' ' || c == '\t' || c == '\n' || c == '\r';
			if (!blank) {
				out.append(c);
			} else if (!afterBlank) {
				out.append(' ');
			}
			afterBlank = blank;
		}
		return out.toString();
	}

	/** All that was set. */
	Outline outline() {
		finish(true);
		return new Outline(all);
	}
}
