package org.frisket.page.bars;

import java.io.IOException;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.page.Ink;
import org.frisket.page.PagePainter;
import org.frisket.page.Words;
import org.frisket.page.flow.Block;
import org.frisket.page.flow.Column;
import org.frisket.page.flow.Figures;

/** A chart on paper, as a block of a column. */
public final class BarBlock {

	private static final Ink EDGE = new Ink("#000000", 0.2, List.of());
	private static final Ink HATCH = new Ink("#000000", 0.15, List.of());
	private static final Ink AXIS = new Ink("#000000", 0.25, List.of());
	private static final Ink MARK = new Ink("#999999", 0.1, List.of());
	private static final double STEP = 1.2;
	private static final double GREY = 0.35;

	private BarBlock() {
	}

	/** As wide as the column. */
	public static Block of(BarChart chart, Column column) throws IOException {
		BarLayout layout = BarLayout.of(chart, column.width(), 0, Column.TEXT, Words::width, Figures::number);
		return new Block(layout.height(), layout.words().stream().map(BarLayout.Word::text).toList(),
				(painter, top) -> paint(layout, painter, column.left(), top));
	}

	private static void paint(BarLayout layout, PagePainter painter, double left, double top) throws IOException {
		for (BarLayout.Line line : layout.lines()) {
			painter.stroke(line(left + line.x(), top + line.top(), left + line.x(), top + line.bottom()),
					line.first() ? AXIS : MARK);
		}
		for (BarLayout.Box box : layout.boxes()) {
			Outline rectangle = Column.rectangle(left + box.x(), top + box.y(), box.width(), box.height());
			// what lies behind must not be read as a part of the pattern
			painter.fill(rectangle, box.pattern() == Pattern.SOLID ? GREY : 1);
			for (Pattern.Stroke stroke : box.pattern().strokes(left + box.x(), top + box.y(), box.width(), box.height(), STEP)) {
				painter.stroke(line(stroke.x1(), stroke.y1(), stroke.x2(), stroke.y2()), HATCH);
			}
			painter.stroke(rectangle, EDGE);
		}
		for (BarLayout.Word word : layout.words()) {
			painter.words(word.text(), left + word.x(), top + word.baseline(), word.capHeight(), word.room() + 0.1,
					Column.BLACK);
		}
	}

	private static Outline line(double x1, double y1, double x2, double y2) {
		return Outline.of(Contour.open(List.of(new Line(new Point(x1, y1), new Point(x2, y2)))));
	}
}
