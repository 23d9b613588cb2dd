package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Shapes;
import org.junit.jupiter.api.Test;

/** Circles within circles, against what centres and radii say. */
class NestingTest {

	private static final int ROUNDS = 200;
	private static final int TRIES = 60;
	private static final double SIDE = 40;

	private record Circle(Point centre, double radius) {

		boolean holds(Circle other) {
			return centre.distance(other.centre) < radius - other.radius;
		}

		boolean crosses(Circle other) {
			double distance = centre.distance(other.centre);
			return distance < radius + other.radius + 0.1 && distance > Math.abs(radius - other.radius) - 0.1;
		}
	}

	@Test
	void parentIsTheSmallestCircleAround() {
		Random random = new Random(41);
		int nested = 0;
		for (int round = 0; round < ROUNDS; round++) {
			List<Circle> circles = circles(random);
			Nesting nesting = new Nesting(circles.stream().map(
					c -> new Ring(Shapes.circle(c.centre.x(), c.centre.y(), c.radius), Winding.FIRST)).toList(), Monitor.NONE);
			assertEquals(circles.size(), nesting.rings.size());
			for (int i = 0; i < circles.size(); i++) {
				Circle inner = circle(nesting.rings.get(i), circles);
				Circle around = circles.stream().filter(c -> c.holds(inner))
						.min((a, b) -> Double.compare(a.radius, b.radius)).orElse(null);
				int parent = nesting.parent(i);
				assertEquals(around, parent < 0 ? null : circle(nesting.rings.get(parent), circles), "round " + round);
				nested += parent < 0 ? 0 : 1;
			}
		}
		assertTrue(nested > ROUNDS, "nested: " + nested);
	}

	private static List<Circle> circles(Random random) {
		List<Circle> circles = new ArrayList<>();
		for (int i = 0; i < TRIES; i++) {
			Circle circle = new Circle(new Point(random.nextDouble() * SIDE, random.nextDouble() * SIDE),
					Math.exp(random.nextDouble() * 4) / 2);
			if (circles.stream().noneMatch(circle::crosses)) {
				circles.add(circle);
			}
		}
		return circles;
	}

	private static Circle circle(Ring ring, List<Circle> circles) {
		Point centre = ring.contour.bounds().centre();
		double radius = ring.contour.bounds().width() / 2;
		return circles.stream().filter(c -> Math.abs(c.radius - radius) < 1e-3 && c.centre.distance(centre) < 1e-3)
				.findFirst().orElseThrow();
	}
}
