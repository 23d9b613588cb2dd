package org.frisket.geometry.axis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Transform;
import org.frisket.geometry.shapes.ShapePath;
import org.junit.jupiter.api.Test;

/** Lengths and places that follow from the definition (Blum 1967). */
class MedialAxisTest {

	private static MedialAxis axis(Contour outer, double spacing, Contour... holes) {
		return MedialAxis.of(new Piece(outer, List.of(holes)), spacing, Monitor.NONE);
	}

	@Test
	void axisOfARectangleIsASegmentAndFourDiagonals() {
		MedialAxis axis = axis(Shapes.rectangle(0, 0, 10, 4), 0.05);
		assertEquals(10 - 4 + 2 * Math.sqrt(2) * 4, axis.length(), 0.2);
		assertEquals(5, axis.branches().size());
		AxisBranch spine = axis.branches().stream().max((a, b) -> Double.compare(a.length(), b.length())).orElseThrow();
		assertEquals(6, spine.length(), 0.05);
		spine.points().forEach(point -> {
			assertEquals(2, point.place().y(), 0.02);
			assertEquals(2, point.radius(), 0.02);
		});
	}

	@Test
	void axisOfAnAnnulusIsTheCircleHalfwayOut() {
		MedialAxis axis = axis(Shapes.circle(0, 0, 5), 0.1, Shapes.circle(0, 0, 3).reversed());
		assertEquals(1, axis.branches().size());
		assertTrue(axis.branches().get(0).ring());
		assertEquals(2 * Math.PI * 4, axis.length(), 0.05);
		axis.branches().get(0).points().forEach(point -> {
			assertEquals(4, point.place().length(), 0.01);
			assertEquals(1, point.radius(), 0.01);
		});
	}

	@Test
	void axisOfAnEllipseEndsAtTheCentresOfCurvature() {
		Contour ellipse = Shapes.circle(0, 0, 1).transformed(Transform.scaling(10, 6));
		MedialAxis axis = axis(ellipse, 0.1);
		double reach = axis.branches().stream().flatMap(branch -> branch.points().stream())
				.mapToDouble(point -> Math.abs(point.place().x())).max().orElseThrow();
		// the cubics of the circle stray from it by 0.03 percent, and what is blunter than 155 degrees is left out
		assertEquals((100 - 36) / 10.0, reach, 0.15);
		axis.branches().forEach(branch -> branch.points().forEach(point -> {
			assertEquals(0, point.place().y(), 0.05);
			assertEquals(6 * Math.sqrt(1 - point.place().x() * point.place().x() / 64), point.radius(), 0.02);
		}));
	}

	@Test
	void axisMovesWithItsShape() {
		Transform turn = new Transform(Math.cos(0.7), Math.sin(0.7), -Math.sin(0.7), Math.cos(0.7), 30, -20);
		MedialAxis there = axis(Shapes.rectangle(0, 0, 10, 4).transformed(turn), 0.05);
		assertEquals(axis(Shapes.rectangle(0, 0, 10, 4), 0.05).length(), there.length(), 0.15);
		Point middle = turn.apply(new Point(5, 2));
		assertTrue(there.branches().stream().flatMap(branch -> branch.points().stream())
				.anyMatch(point -> point.place().distance(middle) < 0.1));
	}

	@Test
	void discsTouchTheBoundaryAndNothingOfItLiesInside() {
		Contour star = PathData.parse(ShapePath.star(20, 20, 5, 0.4)).contours().get(0);
		List<Point> boundary = closely(star);
		for (AxisBranch branch : axis(star, 0.05).branches()) {
			for (AxisPoint point : branch.points()) {
				double nearest = boundary.stream().mapToDouble(b -> b.distance(point.place())).min().orElseThrow();
				assertEquals(nearest, point.radius(), 0.06);
			}
		}
	}

	private static List<Point> closely(Contour contour) {
		List<Point> points = new ArrayList<>();
		for (Segment segment : contour.segments()) {
			for (int i = 0; i < 1000; i++) {
				points.add(segment.at(i / 1000.0));
			}
		}
		return points;
	}
}
