package org.frisket.print.marks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.model.MarkKind;
import org.frisket.print.picture.Grey;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;
import org.frisket.print.register.RegisterFinding.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What marks look like, where they are proposed, and what is said of them before they are printed. */
class MarkPlacementTest {

	private static final MarkDesign DISC = MarkDesign.USUAL;

	private static List<String> ids(List<RegisterFinding> findings) {
		return findings.stream().map(RegisterFinding::id).toList();
	}

	private static List<String> ids(MarkPlan plan, Bounds... parts) {
		return ids(MarkCheck.of(plan, List.of(parts), 3, 300));
	}

	private static MarkPlan plan(MarkDesign design, double... places) {
		List<Mark> marks = new ArrayList<>();
		for (int i = 0; i < places.length; i += 2) {
			marks.add(new Mark(design, new Point(places[i], places[i + 1]), 0));
		}
		return new MarkPlan(210, 148, 5, marks);
	}

	/** The areas follow from size 6 and weight 1 by school geometry. */
	@Test
	void marksAreCleanRegionsOfTheAreaThatTheyAreSaidToHave() {
		assertEquals(11, area(MarkKind.CORNER), 1e-9);
		assertEquals(11, area(MarkKind.CROSS), 1e-9);
		assertEquals(9 * Math.PI, area(MarkKind.DISC), 1e-2);
		// the pole, and the triangle of the pennant beyond it with its tip at (3, -1.5)
		double top = -3 + 1.0 / 6 * 1.5;
		assertEquals(6 + (top + 3) * -0.5 + (0.75 - top) * 5 / 2, area(MarkKind.PENNANT), 1e-9);
	}

	private static double area(MarkKind kind) {
		Region region = new MarkDesign(kind, 6, 1, 2).shape(new Point(30, 40), 0.7);
		for (Contour contour : region.contours()) {
			assertTrue(contour.signedArea() < 0, "an outer contour runs counter-clockwise to the viewer");
		}
		return region.area();
	}

	@ParameterizedTest
	@EnumSource(MarkKind.class)
	void aProposalHasNothingWrongWithIt(MarkKind kind) throws RegisterException {
		Random random = new Random(kind.ordinal());
		for (int round = 0; round < 12; round++) {
			double width = 120 + 200 * random.nextDouble();
			double height = 120 + 200 * random.nextDouble();
			List<Bounds> parts = new ArrayList<>();
			for (int i = 0; i < 30; i++) {
				double x = 25 + (width - 80) * random.nextDouble();
				double y = 25 + (height - 80) * random.nextDouble();
				parts.add(new Bounds(x, y, x + 25 * random.nextDouble(), y + 25 * random.nextDouble()));
			}
			int count = 4 + random.nextInt(4);
			MarkPlan plan = new MarkPlacement(new MarkDesign(kind, 5, 0.8, 3), count, 5).propose(width, height, 5, parts);
			assertEquals(count, plan.marks().size());
			assertEquals(List.of(), ids(MarkCheck.of(plan, parts, 5, 300)));
			assertEquals(MarkKind.PENNANT, plan.marks().get(0).design().kind());
			Bounds spread = plan.places().stream().map(Bounds::of).reduce(Bounds.EMPTY, Bounds::with);
			assertTrue(spread.width() > width - 25 && spread.height() > height - 25, "as far apart as the sheet allows");
		}
	}

	@Test
	void aFullSheetHasNoRoomAndSaysForWhich() {
		List<Bounds> full = List.of(new Bounds(5, 20, 205, 143));
		String message = assertThrows(RegisterException.class,
				() -> new MarkPlacement(DISC, 8, 4).propose(210, 148, 5, List.of(new Bounds(0, 0, 210, 148)))).getMessage();
		assertTrue(message.contains("mark 1 of 8"), message);
		assertThrows(RegisterException.class, () -> new MarkPlacement(DISC, 4, 4).propose(9, 9, 4, full));
	}

	@Test
	void theCodeOfASheetFindsRoomToo() throws RegisterException {
		MarkPlacement placement = new MarkPlacement(DISC, 4, 4);
		List<Bounds> parts = List.of(new Bounds(60, 5, 150, 100));
		MarkPlan plan = placement.propose(210, 148, 5, parts);
		Bounds room = placement.codeRoom(plan, 20, parts);
		assertEquals(20, room.width(), 1e-9);
		assertTrue(MarkCheck.gap(room, parts.get(0)) >= 4 && room.minY() >= 5, room.toString());
		assertTrue(plan.marks().stream().allMatch(mark -> MarkCheck.gap(room, mark.bounds()) >= 4));
		assertThrows(RegisterException.class, () -> placement.codeRoom(plan, 120, parts));
	}

	@Test
	void whatIsWrongWithMarksIsSaid() {
		MarkPlan good = plan(DISC, 10, 10, 200, 10, 200, 138, 50, 138);
		assertEquals(List.of(), ids(good));
		assertEquals(List.of("mark-in-margin"), ids(plan(DISC, 6, 10, 200, 10, 200, 138, 50, 138)));
		List<RegisterFinding> near = MarkCheck.of(good, List.of(new Bounds(14, 5, 60, 40)), 3, 300);
		assertEquals(List.of("mark-near-part"), ids(near));
		assertEquals(1.5, near.get(0).measured().orElseThrow(), 1e-3);
		assertEquals(Severity.CAUTION, near.get(0).severity());
		assertEquals(Severity.BLOCKING, MarkCheck.of(good, List.of(new Bounds(9, 5, 60, 40)), 3, 300).get(0).severity());
		MarkDesign fine = new MarkDesign(MarkKind.CROSS, 5, 0.2, 3);
		assertEquals(List.of("mark-too-fine", "mark-too-fine", "mark-too-fine", "marks-three"),
				ids(plan(fine, 10, 10, 200, 10, 180, 138)));
	}

	@Test
	void marksThatLookTheSameTurnedOrMirroredAreNamed() {
		assertEquals(List.of("marks-symmetric"), ids(plan(DISC, 10, 10, 200, 10, 200, 138, 10, 138)));
		assertEquals(List.of("marks-symmetric"), ids(plan(DISC, 30, 10, 180, 10, 200, 138, 10, 138)));
		MarkPlan square = new MarkPlan(148, 148, 5, plan(DISC, 10, 20, 128, 10, 138, 128, 20, 138).marks());
		assertEquals(List.of("marks-symmetric"), ids(square));
		List<Mark> withPennant = new ArrayList<>(plan(DISC, 10, 10, 200, 10, 200, 138).marks());
		withPennant.add(new Mark(DISC.as(MarkKind.PENNANT), new Point(10, 138), 0));
		assertEquals(List.of(), ids(new MarkPlan(210, 148, 5, withPennant)));
	}

	@Test
	void whatIsNoMarkOrNoPlanIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> new MarkDesign(MarkKind.CROSS, 5, 3, 1));
		assertThrows(IllegalArgumentException.class, () -> new MarkDesign(MarkKind.CROSS, 500, 3, 1));
		assertThrows(IllegalArgumentException.class, () -> plan(DISC, 10, 10, 20, 20));
		assertThrows(IllegalArgumentException.class, () -> new MarkPlan(10, 148, 5, plan(DISC, 1, 1, 2, 2, 3, 3).marks()));
	}

	/** Read by ZXing, painted here pixel by pixel from the modules. */
	@Test
	void theCodeOfASheetIsReadFromAPicture() {
		SheetCode code = new SheetCode(10247, 2);
		assertEquals(Optional.of(code), SheetCode.parse(code.text()));
		assertEquals(Optional.empty(), SheetCode.parse("frisket:job:10247"));
		List<Bounds> dark = code.modules(new Bounds(40, 30, 200, 190)).contours().stream().map(Contour::bounds).toList();
		byte[] shades = new byte[240 * 220];
		for (int y = 0; y < 220; y++) {
			for (int x = 0; x < 240; x++) {
				Point at = new Point(x + 0.5, y + 0.5);
				shades[y * 240 + x] = (byte) (dark.stream().anyMatch(box -> box.contains(at)) ? 30 : 220);
			}
		}
		assertEquals(Optional.of(code), SheetCode.find(new Grey(240, 220, shades)));
		assertEquals(Optional.empty(), SheetCode.find(new Grey(240, 220, new byte[240 * 220])));
	}
}
