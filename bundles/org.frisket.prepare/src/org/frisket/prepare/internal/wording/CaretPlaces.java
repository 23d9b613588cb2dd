package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.typography.Alignment;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;
import org.frisket.typography.TextLine;
import org.frisket.typography.TextSetter;
import org.frisket.typography.VisualOrder;

/**
 * Where a caret stands before each character of a set text and after its last one. In a line of which a part is read
 * from right to left it stands where the character before it ends, at the left of one that is read so.
 */
final class CaretPlaces {

	private final SetText text;
	private final double[] x;
	private final double[] baseline;

	private CaretPlaces(SetText text) {
		this.text = text;
		x = new double[text.text().length() + 1];
		baseline = new double[x.length];
		Arrays.fill(x, Double.NaN);
	}

	/** Points on the baseline in the text's frame, one for each index from 0 to the length of the text. */
	static List<Point> of(SetText text, Monitor monitor) {
		return new CaretPlaces(text).places(blankWidth(text, monitor));
	}

	/** A blank leaves no letter behind it, so its width is what two letters are kept apart by it. */
	private static double blankWidth(SetText text, Monitor monitor) {
		List<Letter> pair = TextSetter
				.set("H H", text.face(), text.setting().withMeasure(0).withAlignment(Alignment.LEFT), monitor).letters();
		return pair.size() < 2 ? text.capHeight() / 3
				: pair.get(1).origin().x() - pair.get(0).origin().x() - pair.get(0).advance();
	}

	private List<Point> places(double blank) {
		for (Letter letter : text.letters()) {
			int parts = letter.end() - letter.start();
			for (int i = 0; i < parts; i++) {
				x[letter.start() + i] = letter.origin().x() + letter.advance() * i / parts;
			}
			if (Double.isNaN(x[letter.end()])) {
				x[letter.end()] = letter.origin().x() + letter.advance();
			}
		}
		for (TextLine line : text.lines()) {
			VisualOrder order = VisualOrder.of(text.text(), line.start(), line.end());
			if (order.isTurned()) {
				fillTurned(line, order, blank);
			} else {
				fill(line, blank);
			}
		}
		List<Point> places = new ArrayList<>();
		for (int i = 0; i < x.length; i++) {
			// the second half of a double line end has no place of its own
			places.add(Double.isNaN(x[i]) ? places.get(i - 1) : new Point(x[i], baseline[i]));
		}
		return places;
	}

	/** What no letter has placed: the start of the line, and whatever follows a blank. */
	private void fill(TextLine line, double blank) {
		for (int i = line.start(); i <= line.end(); i++) {
			baseline[i] = line.baseline();
			if (Double.isNaN(x[i])) {
				x[i] = i == line.start() ? line.left() : x[i - 1] + blank;
			}
		}
	}

	/** From the sides of all characters, found from left to right. */
	private void fillTurned(TextLine line, VisualOrder order, double blank) {
		Map<Integer, Letter> letters = new HashMap<>();
		text.letters().stream().filter(letter -> letter.start() >= line.start() && letter.end() <= line.end())
				.forEach(letter -> letters.put(letter.start(), letter));
		Letter[] letterAt = new Letter[line.end() - line.start()];
		letters.values().forEach(letter -> Arrays.fill(letterAt, letter.start() - line.start(),
				letter.end() - line.start(), letter));
		double[] left = new double[letterAt.length];
		double[] right = new double[letterAt.length];
		double pen = line.left() - (order.runsToTheLeft() ? blank * blanksAtEnd(line) : 0);
		for (int index : order.fromLeft()) {
			int i = index - line.start();
			Letter letter = letterAt[i];
			if (letter == null) {
				left[i] = pen;
				pen += Character.isWhitespace(text.text().charAt(index)) ? blank : 0;
			} else {
				int parts = letter.end() - letter.start();
				int part = order.isTurned(index) ? letter.end() - 1 - index : index - letter.start();
				left[i] = letter.origin().x() + letter.advance() * part / parts;
				pen = letter.origin().x() + letter.advance() * (part + 1) / parts;
			}
			right[i] = pen;
		}
		x[line.start()] = order.runsToTheLeft() ? Math.max(line.left() + line.width(), pen) : line.left();
		for (int i = 0; i < left.length; i++) {
			x[line.start() + i + 1] = order.isTurned(line.start() + i) ? left[i] : right[i];
		}
		Arrays.fill(baseline, line.start(), line.end() + 1, line.baseline());
	}

	/** Blanks at the end of a line are not set; those of one that runs to the left stand out at its left. */
	private int blanksAtEnd(TextLine line) {
		int end = line.end();
		while (end > line.start() && Character.isWhitespace(text.text().charAt(end - 1))) {
			end--;
		}
		return line.end() - end;
	}
}
