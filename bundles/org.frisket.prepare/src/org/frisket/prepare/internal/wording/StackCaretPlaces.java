package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;
import org.frisket.typography.TextLine;

/** Where a caret stands in a text set letter under letter: left of each letter on its baseline, and right of the last. */
final class StackCaretPlaces {

	private StackCaretPlaces() {
	}

	/** One point for each index from 0 to the length of the text. */
	static List<Point> of(SetText text) {
		Point[] places = new Point[text.text().length() + 1];
		for (Letter letter : text.letters()) {
			Arrays.fill(places, letter.start(), letter.end(), letter.origin());
			if (places[letter.end()] == null) {
				places[letter.end()] = letter.origin().plus(new Point(letter.advance(), 0));
			}
		}
		double blank = text.setting().lineDistance() / 2;
		for (TextLine line : text.lines()) {
			for (int i = line.start(); i <= line.end(); i++) {
				if (places[i] == null) {
					places[i] = i == line.start() ? new Point(line.left(), line.baseline())
							: new Point(line.left(), places[i - 1].y() + blank);
				}
			}
		}
		List<Point> all = new ArrayList<>();
		for (Point place : places) {
			// the second half of a double line end has no place of its own
			all.add(place == null ? all.get(all.size() - 1) : place);
		}
		return all;
	}
}
