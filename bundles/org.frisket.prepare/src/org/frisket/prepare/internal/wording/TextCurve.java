package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.model.Flow;
import org.frisket.model.Wording;
import org.frisket.prepare.wording.CaretPlace;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;
import org.frisket.typography.TextLine;
import org.frisket.typography.layout.Arc;
import org.frisket.typography.layout.ArcLayout;
import org.frisket.typography.layout.Bent;
import org.frisket.typography.layout.Laid;
import org.frisket.typography.layout.PathLayout;

/** What the lines of a wording are bent to. */
sealed interface TextCurve {

	record Circle(Arc arc) implements TextCurve {

		@Override
		public Bent bend(List<Letter> letters, SetText text) {
			return ArcLayout.bend(letters, text.lines(), text.setting(), arc);
		}
	}

	record Path(Contour contour, PathLayout.Options options) implements TextCurve {

		@Override
		public Bent bend(List<Letter> letters, SetText text) {
			return PathLayout.bend(letters, text.lines(), text.setting(), contour, options);
		}
	}

	/** @throws IllegalArgumentException if the circle is too small for its lines */
	Bent bend(List<Letter> letters, SetText text);

	default Laid lay(SetText text) {
		Bent bent = bend(text.letters(), text);
		return new Laid(text.withLetters(bent.letters()), bent.overflowing(), bent.needed(), bent.available());
	}

	/** Carets of the straight text, one for each index, brought to the curve and turned with it. */
	default List<CaretPlace> carets(SetText text, List<Point> feet) {
		List<Letter> ends = new ArrayList<>();
		for (int i = 0; i < feet.size(); i++) {
			Point foot = feet.get(i);
			for (Point end : List.of(foot, new Point(foot.x(), foot.y() - 1))) {
				ends.add(new Letter(i, i, lineOf(text, i), 0, List.of(), Outline.EMPTY, end, 0, -1));
			}
		}
		List<Letter> bent = bend(ends, text).letters();
		List<CaretPlace> carets = new ArrayList<>();
		for (int i = 0; i < feet.size(); i++) {
			Point foot = bent.get(2 * i).origin();
			carets.add(new CaretPlace(foot, bent.get(2 * i + 1).origin().minus(foot).unit()));
		}
		return carets;
	}

	/** Places of a line of the straight text, at any height, brought to the curve as parts of that line. */
	default List<Point> bend(SetText text, List<Point> points, int line) {
		List<Letter> places = points.stream()
				.map(point -> new Letter(0, 0, line, 0, List.of(), Outline.EMPTY, point, 0, -1)).toList();
		return bend(places, text).letters().stream().map(Letter::origin).toList();
	}

	private static int lineOf(SetText text, int index) {
		List<TextLine> lines = text.lines();
		int line = 0;
		while (line < lines.size() - 1 && lines.get(line + 1).start() <= index) {
			line++;
		}
		return line;
	}

	/** Empty if the lines stay straight. */
	static Optional<TextCurve> of(WordingSource source) {
		Wording wording = source.wording();
		if (wording.getFlow() == Flow.ARC && wording.getArcRadius() > 0) {
			return Optional.of(new Circle(new Arc(wording.getArcRadius(),
					wording.isArcInward() ? Arc.Direction.COUNTER_CLOCKWISE : Arc.Direction.CLOCKWISE,
					wording.isArcInside() ? Arc.Side.INSIDE : Arc.Side.OUTSIDE, wording.getArcAngle())));
		}
		return source.path().map(path -> new Path(path, new PathLayout.Options(wording.getPathStart(),
				wording.isPathReversed(), wording.isPathHanging())));
	}
}
