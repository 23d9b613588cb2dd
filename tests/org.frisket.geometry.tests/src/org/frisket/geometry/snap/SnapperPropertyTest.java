package org.frisket.geometry.snap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

/** The snapper against one that looks at everything. */
class SnapperPropertyTest {

	private static final double SAME = 1e-6;
	private static final int ROUNDS = 3000;

	/** What was given to a snapper, once more as plain lists. */
	private static final class Targets {

		final Snapper.Builder builder = new Snapper.Builder();
		final List<SnapLine> vertical = new ArrayList<>();
		final List<SnapLine> horizontal = new ArrayList<>();
		final List<Point> nodes = new ArrayList<>();
		final Bounds sheet = new Bounds(0, 0, 200, 150);
		final double step;

		Targets(Random random, boolean coarse) {
			for (int i = random.nextInt(4); i > 0; i--) {
				boolean across = random.nextBoolean();
				double at = place(random, coarse);
				builder.guide(across, at);
				(across ? horizontal : vertical).add(SnapLine.endless(at, SnapKind.GUIDE));
			}
			for (int i = random.nextInt(8); i > 0; i--) {
				Bounds box = box(random, coarse);
				builder.edges(box).centre(box);
				add(vertical, box.minX(), box.centre().x(), box.maxX());
				add(horizontal, box.minY(), box.centre().y(), box.maxY());
			}
			for (int i = random.nextInt(12); i > 0; i--) {
				Point node = new Point(place(random, coarse), place(random, coarse));
				builder.node(node);
				nodes.add(node);
			}
			step = random.nextBoolean() ? 0 : 1 + random.nextInt(10);
			if (step > 0) {
				builder.grid(new SnapGrid(step, sheet));
				for (double at = 0; at <= 200; at += step) {
					vertical.add(SnapLine.endless(at, SnapKind.GRID));
					if (at <= 150) {
						horizontal.add(SnapLine.endless(at, SnapKind.GRID));
					}
				}
			}
		}

		private static void add(List<SnapLine> lines, double low, double middle, double high) {
			lines.add(SnapLine.endless(low, SnapKind.EDGE));
			lines.add(SnapLine.endless(middle, SnapKind.CENTRE));
			lines.add(SnapLine.endless(high, SnapKind.EDGE));
		}
	}

	/** Coarse places meet each other often, fine ones hardly ever. */
	private static double place(Random random, boolean coarse) {
		return coarse ? random.nextInt(60) / 2.0 : random.nextDouble() * 60;
	}

	private static Bounds box(Random random, boolean coarse) {
		Bounds corner = Bounds.of(new Point(place(random, coarse), place(random, coarse)));
		return corner.with(new Point(place(random, coarse), place(random, coarse)));
	}

	/** The least distance, and of those at it the first kind; with the node's offer among them. */
	private static Optional<SnapHold> reference(List<SnapLine> lines, List<Double> anchors, double reach,
			SnapHold node) {
		List<SnapHold> all = new ArrayList<>();
		if (node != null) {
			all.add(node);
		}
		for (double anchor : anchors) {
			for (SnapLine line : lines) {
				if (Math.abs(line.at() - anchor) <= reach) {
					all.add(new SnapHold(line.at() - anchor, line));
				}
			}
		}
		double least = all.stream().mapToDouble(hold -> Math.abs(hold.shift())).min().orElse(0);
		return all.stream().filter(hold -> Math.abs(hold.shift()) <= least + SAME / 10)
				.min(Comparator.comparing(SnapHold::kind));
	}

	private static void assertLikeReference(Targets targets, SnapAnchors anchors, double reach, SnapResult held) {
		Point node = null;
		Point anchor = null;
		for (Point each : anchors.points()) {
			for (Point other : targets.nodes) {
				if (other.distance(each) <= reach && (node == null || other.distance(each) < node.distance(anchor))) {
					node = other;
					anchor = each;
				}
			}
		}
		if (node == null) {
			assertSame(reference(targets.vertical, anchors.xs(), reach, null), held.x());
			assertSame(reference(targets.horizontal, anchors.ys(), reach, null), held.y());
			assertEquals(Optional.empty(), held.node());
			return;
		}
		// another node may be just as near, so that only what they all have in common is asked
		double distance = node.distance(anchor);
		if (held.node().isPresent()) {
			assertTrue(anchors.points().stream()
					.anyMatch(each -> held.node().get().distance(held.applied(each)) < SAME));
			assertEquals(distance, Math.hypot(held.dx(), held.dy()), SAME);
		} else {
			assertTrue(held.x().isPresent() && held.y().isPresent());
			assertTrue(Math.abs(held.dx()) <= distance + SAME || Math.abs(held.dy()) <= distance + SAME);
			boolean guided = held.x().get().kind() == SnapKind.GUIDE || held.y().get().kind() == SnapKind.GUIDE;
			boolean noded = held.x().get().kind() == SnapKind.NODE || held.y().get().kind() == SnapKind.NODE;
			assertTrue(guided || !noded, "a node that holds one axis holds the other: " + held);
		}
	}

	private static void assertSame(Optional<SnapHold> expected, Optional<SnapHold> held) {
		assertEquals(expected.isPresent(), held.isPresent());
		if (expected.isPresent()) {
			assertEquals(expected.get().kind(), held.get().kind());
			assertEquals(Math.abs(expected.get().shift()), Math.abs(held.get().shift()), SAME);
		}
	}

	@Test
	void holdsWhatTheReferenceHolds() {
		int[] counts = new int[SnapKind.values().length];
		for (int round = 0; round < ROUNDS; round++) {
			Random random = new Random(round);
			boolean coarse = random.nextBoolean();
			Targets targets = new Targets(random, coarse);
			Snapper snapper = targets.builder.build();
			double reach = 0.25 + random.nextDouble() * 2;
			for (int i = 0; i < 10; i++) {
				SnapAnchors anchors = random.nextBoolean() ? SnapAnchors.of(box(random, coarse))
						: SnapAnchors.of(new Point(place(random, coarse), place(random, coarse)));
				SnapResult held = snapper.snap(anchors, reach);
				assertLikeReference(targets, anchors, reach, held);
				held.x().ifPresent(hold -> counts[hold.kind().ordinal()]++);
			}
		}
		for (SnapKind kind : SnapKind.values()) {
			assertTrue(counts[kind.ordinal()] > 100, kind + " held hardly ever: " + counts[kind.ordinal()]);
		}
	}

	@Test
	void heldThingIsHeldAgainWithoutMoving() {
		for (int round = 0; round < ROUNDS; round++) {
			Random random = new Random(round);
			Snapper snapper = new Targets(random, false).builder.build();
			Bounds box = box(random, false);
			SnapResult held = snapper.snap(box, 2);
			if (held.isHeld()) {
				SnapResult again = snapper.snap(held.applied(box), 2);
				assertTrue(held.x().isEmpty() || again.x().isPresent());
				assertTrue(held.y().isEmpty() || again.y().isPresent());
				// a node may come near by the very move that the other axis asked for
				if (!byNode(held) && !byNode(again)) {
					assertTrue(held.x().isEmpty() || Math.abs(again.dx()) < SAME, "round " + round);
					assertTrue(held.y().isEmpty() || Math.abs(again.dy()) < SAME, "round " + round);
				}
			}
		}
	}

	private static boolean byNode(SnapResult held) {
		return Stream.of(held.x(), held.y()).flatMap(Optional::stream).anyMatch(hold -> hold.kind() == SnapKind.NODE);
	}

	@Test
	void nothingIsMovedFartherThanTheReach() {
		for (int round = 0; round < ROUNDS; round++) {
			Random random = new Random(round);
			Snapper snapper = new Targets(random, random.nextBoolean()).builder.build();
			double reach = random.nextDouble() * 3;
			SnapResult held = snapper.snap(box(random, random.nextBoolean()), reach);
			assertTrue(Math.abs(held.dx()) <= reach + SAME && Math.abs(held.dy()) <= reach + SAME);
		}
	}
}
