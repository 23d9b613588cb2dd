package org.frisket.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Sheet;
import org.frisket.prepare.Finding;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/** What is wrong on a sheet, and what would be. */
class SheetSpaceTest {

	private final Job job = Shapes.job();
	private final Sheet sheet = Jobs.addSheet(job, "card", 200, 100);

	SheetSpaceTest() {
		sheet.setGap(2);
		sheet.setMargin(5);
		Shapes.cut(job, 0, 0, 20, 20).setName("Square");
		Shapes.add(Shapes.card(job), OperationKind.CUT, Shapes.disc(100, 0, 10)).setName("Disc");
	}

	private List<String> findings() {
		return Shapes.laid(job).get(0).findings().stream().map(Finding::id).toList();
	}

	private Finding only() {
		List<Finding> findings = Shapes.laid(job).get(0).findings();
		assertEquals(1, findings.size(), findings::toString);
		return findings.get(0);
	}

	@Test
	void whatKeepsGapAndMarginIsRight() {
		Jobs.addPlacement(sheet, "e1", 15, 15, 0);
		Jobs.addPlacement(sheet, "e2", 37, 15, 0);
		assertEquals(List.of(), findings());
	}

	@Test
	void overlapsAreMeasured() {
		Jobs.addPlacement(sheet, "e1", 30, 30, 0);
		Jobs.addPlacement(sheet, "e1", 45, 30, 90);
		assertEquals("parts-overlap", only().id());
		assertEquals(5, only().measured().getAsDouble(), 0.2);
		assertTrue(only().isBlocking());
		assertTrue(only().message().contains("Square"), only().message());
	}

	@Test
	void onePartInAnotherOverlapsIt() {
		Shapes.cut(job, 0, 200, 60, 60);
		Jobs.addPlacement(sheet, "e3", 50, 50, 0);
		Jobs.addPlacement(sheet, "e1", 50, 50, 0);
		assertEquals(20, only().measured().getAsDouble(), 0.5);
	}

	@Test
	void gapsAreMeasured() {
		Jobs.addPlacement(sheet, "e1", 30, 30, 0);
		Jobs.addPlacement(sheet, "e2", 51.5, 30, 0);
		assertEquals("parts-too-near", only().id());
		assertEquals(1.5, only().measured().getAsDouble(), 0.01);
		assertEquals(2, only().limit().getAsDouble());
	}

	@Test
	void marginAndEdgeAreMeasured() {
		Jobs.addPlacement(sheet, "e1", 14, 50, 0);
		assertEquals("part-in-margin", only().id());
		assertEquals(4, only().measured().getAsDouble(), 1e-9);
		sheet.getPlacements().get(0).setX(193);
		assertEquals("part-over-edge", only().id());
		assertEquals(-3, only().measured().getAsDouble(), 1e-9);
	}

	@Test
	void whatIsMissingIsSaid() {
		Jobs.addPlacement(sheet, "e9", 30, 30, 0);
		Jobs.addPlacement(sheet, "e1#4", 30, 30, 0);
		assertEquals(List.of("part-missing", "part-missing"), findings());
		assertEquals(2, Shapes.laid(job).get(0).missing().size());
	}

	@Test
	void bothKindsOfKeysAreFound() {
		Jobs.addPlacement(sheet, "e1", 30, 30, 0);
		Jobs.addPlacement(sheet, "e2#1", 80, 30, 0);
		LaidSheet laid = Shapes.laid(job).get(0);
		assertEquals(2, laid.parts().size());
		assertEquals((400 + 100 * Math.PI) / 20000, laid.utilisation(), 1e-5);
		assertEquals(2, laid.content().layers().get(0).elements().size());
	}

	@Test
	void questionsWhileDraggingAgreeWithJts() {
		Random random = new Random(4);
		for (int i = 0; i < 60; i++) {
			Jobs.addPlacement(sheet, i % 2 == 0 ? "e1" : "e2", random.nextDouble() * 200, random.nextDouble() * 100,
					random.nextInt(24) * 15);
		}
		LaidSheet laid = Shapes.laid(job).get(0);
		SheetSpace space = SheetSpace.of(laid, Tolerance.DEFAULT).workOut(Monitor.NONE);
		LaidPart moved = laid.parts().get(0);
		int near = 0;
		for (int i = 0; i < 200; i++) {
			double x = random.nextDouble() * 200;
			double y = random.nextDouble() * 100;
			double turn = random.nextInt(360);
			SheetSpace.Answer answer = space.at(moved, x, y, turn);
			Geometry there = Polygons.of(moved.part().room().transformed(LaidSheets.place(moved.part().room(), x, y, turn)), 0.001);
			for (LaidPart other : laid.parts()) {
				Geometry lies = Polygons.of(other.room(), 0.001);
				double distance = there.distance(lies);
				boolean overlapped = answer.overlapped().contains(other);
				if (other == moved) {
					assertFalse(overlapped);
				} else if (distance > 0.05) {
					assertFalse(overlapped);
					if (Math.abs(distance - 2) > 0.05) {
						assertEquals(distance < 2, answer.near().contains(other), () -> "at " + distance);
						near += distance < 2 ? 1 : 0;
					}
				} else if (there.intersection(lies).buffer(-0.1).getArea() > 0) {
					assertTrue(overlapped);
				}
			}
			var box = there.getEnvelopeInternal();
			double edge = Math.min(Math.min(box.getMinX(), box.getMinY()), Math.min(200 - box.getMaxX(), 100 - box.getMaxY()));
			assertEquals(edge, answer.edge(), 0.03);
			if (Math.abs(edge - 5) > 0.05) {
				assertEquals(edge > 5, answer.inBounds());
			}
		}
		assertTrue(near > 20, "some were near: " + near);
	}

	@Test
	void partsMovedTogetherAreNotComparedWithEachOther() {
		Jobs.addPlacement(sheet, "e1", 30, 30, 0);
		Jobs.addPlacement(sheet, "e2", 45, 30, 0);
		Jobs.addPlacement(sheet, "e1", 120, 30, 0);
		LaidSheet laid = Shapes.laid(job).get(0);
		SheetSpace space = SheetSpace.of(laid, Tolerance.DEFAULT);
		assertTrue(space.moved(laid.parts().subList(0, 2), Transform.translation(10, 10)).isFree());
		assertEquals(List.of(laid.parts().get(2)),
				space.moved(laid.parts().subList(0, 2), Transform.translation(80, 0)).overlapped());
	}
}
