package org.frisket.print.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Point;
import org.frisket.model.FrisketFactory;
import org.frisket.model.MarkKind;
import org.frisket.model.MeasuredMark;
import org.frisket.model.RegisterMark;
import org.frisket.model.Sheet;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkDesign;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.RegisterFinding;
import org.junit.jupiter.api.Test;

/** The marks of a sheet of 300 by 200 mm, measured: figures worked out by hand from the closed form of Umeyama (1991). */
class MeasuredSheetTest {

	private static final List<Point> DESIGNED = List.of(new Point(10, 10), new Point(290, 10), new Point(290, 190),
			new Point(10, 190));
	private static final List<Point> MEASURED = List.of(new Point(11.48, 9.29), new Point(291.94, 11.79),
			new Point(290.43, 192.16), new Point(9.80, 189.65));

	private static MarkPlan plan(List<Point> places) {
		return new MarkPlan(300, 200, 5, places.stream().map(place -> new Mark(MarkDesign.USUAL, place, 0)).toList());
	}

	private static List<Optional<Point>> all(List<Point> places) {
		return places.stream().map(Optional::of).toList();
	}

	private static void assertPoint(double x, double y, Point actual, double within) {
		assertEquals(x, actual.x(), within);
		assertEquals(y, actual.y(), within);
	}

	@Test
	void allMarksTellHowTheSheetLies() {
		MeasuredSheet sheet = MeasuredSheet.of(plan(DESIGNED), FitKind.SIMILARITY, all(MEASURED));
		assertTrue(sheet.isSound());
		assertEquals("", sheet.trouble());
		assertEquals(0.043499, sheet.fit().orElseThrow().rms(), 1e-6);
		assertPoint(0.0404, -0.0062, sheet.residual(0).orElseThrow(), 1e-4);
		assertPoint(-0.0513, -0.0042, sheet.residual(1).orElseThrow(), 1e-4);
		assertEquals(Optional.of(1), sheet.worst());
	}

	/** sigma (1/n + rho²/S)^(1/2) along each axis, with sigma² = sum of squares / 4 to spare and S = 110800. */
	@Test
	void theErrorGrowsAwayFromTheMarks() {
		MeasuredSheet sheet = MeasuredSheet.of(plan(DESIGNED), FitKind.SIMILARITY, all(MEASURED));
		double sigma = 0.043499;
		assertEquals(sigma * Math.sqrt(0.25) * Math.sqrt(2), sheet.errorAt(new Point(150, 100)).orElseThrow(), 1e-4);
		double rho2 = 150 * 150 + 100 * 100;
		assertEquals(sigma * Math.sqrt(0.25 + rho2 / 110800) * Math.sqrt(2), sheet.errorAt(Point.ORIGIN).orElseThrow(), 2e-4);
		assertTrue(MeasuredSheet.of(plan(DESIGNED), FitKind.PROJECTIVE, all(MEASURED)).errorAt(Point.ORIGIN).isEmpty(),
				"nothing is to spare");
	}

	@Test
	void aFewMarksTellNothingYet() {
		MeasuredSheet one = MeasuredSheet.of(plan(DESIGNED), FitKind.SIMILARITY,
				List.of(Optional.of(MEASURED.get(0)), Optional.empty(), Optional.empty(), Optional.empty()));
		assertEquals(1, one.count());
		assertTrue(one.fit().isEmpty());
		assertFalse(one.isSound());
		assertFalse(one.trouble().isEmpty());
		assertTrue(one.residual(0).isEmpty());
		assertTrue(one.worst().isEmpty());
		assertTrue(one.errorAt(Point.ORIGIN).isEmpty());
	}

	/** One is not measured: those behind it keep their numbers. */
	@Test
	void aMarkThatIsOffIsNamedByItsNumberOnTheSheet() {
		List<Point> places = new ArrayList<>(DESIGNED);
		places.add(new Point(150, 10));
		places.add(new Point(150, 190));
		List<Optional<Point>> measured = new ArrayList<>(all(places));
		measured.set(1, Optional.empty());
		measured.set(4, Optional.of(new Point(153, 10)));
		MeasuredSheet sheet = MeasuredSheet.of(plan(places), FitKind.SIMILARITY, measured);
		RegisterFinding off = sheet.findings().stream().filter(finding -> finding.id().equals("mark-off")).findFirst()
				.orElseThrow();
		assertTrue(off.message().contains("5"), off.message());
		assertEquals(Optional.of(4), sheet.worst());
		measured.set(4, measured.get(5));
		assertTrue(MeasuredSheet.of(plan(places), FitKind.SIMILARITY, measured).trouble().matches(".*5.*6.*"));
	}

	@Test
	void aMirroredSheetIsNoneToCut() {
		List<Optional<Point>> mirrored = MEASURED.stream().map(place -> Optional.of(new Point(300 - place.x(), place.y())))
				.toList();
		MeasuredSheet sheet = MeasuredSheet.of(plan(DESIGNED), FitKind.AFFINE, mirrored);
		assertFalse(sheet.isSound());
		assertEquals("sheet-mirrored", sheet.findings().get(0).id());
		assertTrue(sheet.errorAt(Point.ORIGIN).isEmpty());
	}

	@Test
	void aJobKeepsWhatWasMeasured() {
		Sheet sheet = FrisketFactory.INSTANCE.createSheet();
		for (int i = 0; i < 4; i++) {
			RegisterMark mark = FrisketFactory.INSTANCE.createRegisterMark();
			mark.setKind(MarkKind.DISC);
			sheet.getMarks().add(mark);
		}
		List<Optional<Point>> places = List.of(Optional.of(new Point(1, 2)), Optional.empty(), Optional.of(new Point(3, 4)),
				Optional.empty());
		List<Optional<Point>> ofBack = List.of(Optional.of(new Point(5, 6)), Optional.of(new Point(7, 8)), Optional.empty(),
				Optional.empty());
		sheet.getMeasured().addAll(KeptMeasures.with(sheet, false, places));
		assertEquals(places, KeptMeasures.of(sheet, false));
		List<MeasuredMark> both = KeptMeasures.with(sheet, true, ofBack);
		sheet.getMeasured().clear();
		sheet.getMeasured().addAll(both);
		assertEquals(places, KeptMeasures.of(sheet, false), "the other side stays");
		assertEquals(ofBack, KeptMeasures.of(sheet, true));
		sheet.getMeasured().get(0).setMark(7);
		assertEquals(Optional.empty(), KeptMeasures.of(sheet, false).get(0), "of a mark that is no more");
		assertEquals(2, KeptMeasures.with(sheet, false, List.of()).size(), "a side is forgotten alone");
	}
}
