package org.frisket.geometry.repair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.internal.repair.UnitedAreas;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.RepairCourse.Proved;
import org.frisket.geometry.repair.RepairCourse.Stage;
import org.junit.jupiter.api.Test;

/** A course says how far it has moved anything, and is not taken at its word. */
class MovementTest {

	private static final Tolerance TOLERANCE = new Tolerance(0.02);
	private static final double EXACT = 0.002;

	/** A step that does as it is told. */
	private record Bent(UnaryOperator<Outline> way, List<Contour> taken, List<Contour> brought) implements RepairStep {

		@Override
		public List<Option> options() {
			return List.of();
		}

		@Override
		public Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor) {
			List<Artwork.Area> areas = artwork.areas().stream()
					.map(area -> new Artwork.Area(way.apply(area.outline()), area.rule())).toList();
			List<Contour> lines = way.apply(new Outline(artwork.lines())).contours();
			return new Mended(new Artwork(areas, lines), List.of(), taken, brought);
		}
	}

	private static Artwork areas(String... each) {
		return new Artwork(List.of(each).stream().map(data -> new Artwork.Area(PathData.parse(data), FillRule.NON_ZERO))
				.toList(), List.of());
	}

	private static Proved bent(Artwork artwork, UnaryOperator<Outline> way, List<Contour> taken, List<Contour> brought) {
		return prove(artwork, new Bent(way, taken, brought));
	}

	private static Proved prove(Artwork artwork, RepairStep step) {
		return new RepairCourse(List.of(new Stage(step))).prove(artwork, TOLERANCE, Monitor.NONE);
	}

	private static UnaryOperator<Outline> first(int count) {
		return outline -> new Outline(outline.contours().subList(0, Math.min(count, outline.contours().size())));
	}

	private static final String FRAME = "M0 0V10H10V0Z M2 2H8V8H2Z";

	@Test
	void whatIsMovedIsMeasuredBothWays() {
		Movement movement = bent(areas(FRAME), o -> o.transformed(Transform.translation(0.3, 0.4)), List.of(), List.of())
				.movement();
		assertEquals(0.5, movement.result().mm(), EXACT);
		assertEquals(0.5, movement.source().mm(), EXACT);
		assertFalse(movement.isWithin(TOLERANCE));
		assertTrue(movement.isWithin(new Tolerance(0.5)));
	}

	@Test
	void aHoleThatIsLostIsNoticedUnlessItIsListed() {
		Proved lost = bent(areas(FRAME), first(1), List.of(), List.of());
		assertEquals(0, lost.movement().result().mm(), "one way nothing is to be seen");
		assertEquals(2, lost.movement().source().mm(), EXACT);
		List<Contour> hole = PathData.parse(FRAME).contours().subList(1, 2);
		assertTrue(bent(areas(FRAME), first(1), hole, List.of()).movement().isWithin(TOLERANCE));
	}

	@Test
	void aLineThatIsLostOrBroughtIsNoticedUnlessItIsListed() {
		Artwork lines = new Artwork(List.of(), PathData.parse("M0 0H10 M0 7H10").contours());
		assertEquals(7, bent(lines, first(1), List.of(), List.of()).movement().mm(), EXACT);
		UnaryOperator<Outline> more = o -> o.isEmpty() ? o : o.plus(PathData.parse("M0 3H10"));
		assertEquals(3, bent(lines, more, List.of(), List.of()).movement().mm(), EXACT);
		assertEquals(0, bent(lines, more, List.of(), PathData.parse("M0 3H10").contours()).movement().mm());
	}

	@Test
	void whatLiesWithinOtherAreasIsTakenByUnitingThem() {
		Proved proved = prove(areas("M0 0V10H10V0Z", "M5 5V15H15V5Z", "M10 0V3H20V0Z", "M6 6V7H7V6Z", "M0 30H9V20Z"), new UnitedAreas());
		assertEquals(0, proved.movement().mm(), EXACT);
		double taken = proved.mended().taken().stream().mapToDouble(Contour::length).sum();
		assertEquals(20 + 6 + 4, taken, 0.1, "sides within another, two that are shared, and a whole square");
	}

	@Test
	void windingAndTheEvenOddRuleAreKept() {
		String star = "M50 5L79 95L2 38H98L21 95z";
		Proved winding = prove(areas(star), new UnitedAreas());
		assertTrue(winding.movement().isWithin(TOLERANCE));
		assertFalse(winding.mended().taken().isEmpty());
		Artwork evenOdd = new Artwork(List.of(new Artwork.Area(PathData.parse(star), FillRule.EVEN_ODD)), List.of());
		assertTrue(prove(evenOdd, new UnitedAreas()).movement().isWithin(TOLERANCE));
		Proved twice = prove(new Artwork(List.of(new Artwork.Area(PathData.parse("M0 0H9V9H0Z M0 0H9V9H0Z M20 0H29V9H20Z"), FillRule.EVEN_ODD)),
				List.of()), new UnitedAreas());
		assertTrue(twice.movement().isWithin(TOLERANCE), "one within itself is none");
		assertEquals(72, twice.mended().taken().stream().mapToDouble(Contour::length).sum(), 0.1);
	}
}
