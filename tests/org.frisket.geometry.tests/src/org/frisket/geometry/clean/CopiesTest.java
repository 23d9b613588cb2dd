package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.junit.jupiter.api.Test;

class CopiesTest {

	private static final Tolerance TOLERANCE = new Tolerance(0.02);

	/** A ring, a ring wound the wrong way, a bow tie that crosses itself, a leaf of two curves, a speck beside a square. */
	private static final List<Outline> SHAPES = List.of(PathData.parse("M0 0V10H10V0ZM2 2H8V8H2Z"),
			PathData.parse("M0 0H10V10H0ZM2 2V8H8V2Z"), PathData.parse("M0 0L10 10V0L0 10Z"),
			PathData.parse("M0 5C3 -2 7 -2 10 5C7 12 3 12 0 5Z"), PathData.parse("M0 0H10V10H0ZM12 0h0.001v0.001h-0.001Z"));

	@Test
	void copiesComeOutAsContoursOfTheirOwnDo() {
		Random random = new Random(7);
		for (int i = 0; i < 300; i++) {
			List<Contour> copies = new ArrayList<>();
			for (int k = 0; k < 12; k++) {
				Outline shape = SHAPES.get(random.nextInt(SHAPES.size()));
				// close enough together to overlap now and then
				copies.addAll(shape.transformed(Transform.translation(random.nextDouble() * 150, random.nextDouble() * 40))
						.contours());
			}
			List<Contour> own = copies.stream().map(c -> Contour.closed(c.segments())).toList();
			CleanResult expected = clean(new OutlineCleaner(), new Outline(own));
			CleanResult result = clean(new OutlineCleaner(), new Outline(copies));
			assertEquals(expected.region(), result.region(), "artwork " + i);
			assertEquals(expected.repairs().stream().map(Repair::kind).toList(),
					result.repairs().stream().map(Repair::kind).toList(), "artwork " + i);
			RegionAssert.assertClean(result.region(), TOLERANCE.mm(), "artwork " + i);
		}
	}

	@Test
	void aShapeIsLookedAtOnceHoweverManyCopiesThereAre() {
		List<Contour> copies = new ArrayList<>();
		for (int i = 0; i < 100; i++) {
			copies.addAll(SHAPES.get(0).transformed(Transform.translation(20 * i + 1, 3 * i)).contours());
		}
		int[] asked = new int[1];
		Memory counting = new Memory() {
			@Override
			public <R> R get(Object key, Supplier<R> computation) {
				asked[0]++;
				return computation.get();
			}
		};
		CleanResult result = clean(new OutlineCleaner(counting), new Outline(copies));
		assertEquals(100, result.region().pieces().size());
		assertEquals(1, asked[0]);
	}

	@Test
	void aRepairIsReportedWhereTheCopyStands() {
		Outline wrong = SHAPES.get(1);
		CleanResult result = clean(new OutlineCleaner(),
				wrong.transformed(Transform.translation(5, 0)).plus(wrong.transformed(Transform.translation(105, 7))));
		assertEquals(clean(new OutlineCleaner(), wrong).repairs().size() * 2, result.repairs().size());
		assertTrue(result.repairs().stream().anyMatch(r -> r.place().equals(new Point(105, 7))),
				result.repairs().toString());
	}

	@Test
	void onlyMovesMakeCopies() {
		Contour contour = SHAPES.get(3).contours().get(0);
		assertSame(contour, contour.model());
		Contour twice = contour.transformed(Transform.translation(1, 2)).transformed(Transform.translation(3, 4));
		assertSame(contour, twice.model());
		assertEquals(new Point(4, 6), twice.offset());
		Contour turned = contour.transformed(Transform.rotation(1));
		assertSame(turned, turned.model());
		assertNotSame(contour, twice.reversed().model());
	}

	private static CleanResult clean(OutlineCleaner cleaner, Outline outline) {
		return cleaner.clean(outline, FillRule.NON_ZERO, TOLERANCE, Monitor.NONE);
	}
}
