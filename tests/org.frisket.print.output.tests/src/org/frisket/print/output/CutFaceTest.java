package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.MeasuredMark;
import org.frisket.model.OperationKind;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedElement;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.Registration;
import org.frisket.sheets.JobParts;
import org.frisket.sheets.LaidSheet;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;

class CutFaceTest {

	private static final double EXACT = 1e-9;

	private final SampleSheet sample = new SampleSheet();

	CutFaceTest() {
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		Jobs.addOperation(sample.card, OperationKind.PRINT);
		SampleSheet.outline(sample.layer, "M40 0V50", OperationKind.CREASE);
	}

	private LaidSheet cut(boolean back, Optional<Registration> fit) throws RegisterException {
		return new PrintAndCut(sample.print(PrintOptions.USUAL), fit, Optional.empty(), List.of()).cut(back, false, Tolerance.DEFAULT, Monitor.NONE)
				.orElseThrow();
	}

	private static List<OperationKind> kinds(LaidSheet laid) {
		return laid.content().elements().flatMap(element -> element.operations().stream()).map(each -> each.getKind()).toList();
	}

	private static void assertBox(Bounds expected, PreparedElement element) {
		Bounds box = element.bounds();
		assertEquals(expected.minX(), box.minX(), EXACT);
		assertEquals(expected.minY(), box.minY(), EXACT);
		assertEquals(expected.maxX(), box.maxX(), EXACT);
		assertEquals(expected.maxY(), box.maxY(), EXACT);
	}

	@Test
	void nothingIsLeftOfThePrint() throws RegisterException {
		LaidSheet laid = cut(false, Optional.empty());
		assertEquals(List.of(OperationKind.CUT, OperationKind.CREASE), kinds(laid));
		assertBox(new Bounds(60, 50, 140, 100), laid.content().elements().toList().get(0));
		assertBox(new Bounds(100, 50, 100, 100), laid.content().elements().toList().get(1));
		assertEquals(200, laid.sheet().getWidth());
		assertEquals(1, laid.parts().size());
		assertEquals(4000, laid.parts().get(0).room().area(), 1e-6);
	}

	@Test
	void workOfABackLayerIsDoneOnTheTurnedSheet() throws RegisterException {
		Layer back = Jobs.addLayer(sample.job, "Back");
		back.setBack(true);
		SampleSheet.outline(back, "M10 0V50", OperationKind.CREASE);
		assertEquals(List.of(OperationKind.CUT, OperationKind.CREASE), kinds(cut(false, Optional.empty())));
		LaidSheet turned = cut(true, Optional.empty());
		assertEquals(List.of(OperationKind.CREASE), kinds(turned));
		assertBox(new Bounds(130, 50, 130, 100), turned.content().elements().findFirst().orElseThrow());
	}

	@Test
	void cutsGoWhereThePrintWasMeasured() throws RegisterException {
		SampleSheet.outline(sample.layer, "M30 25C30 10 50 10 50 25S30 40 30 25Z", OperationKind.CUT);
		Transform lies = Transform.scaling(1.002, 1.002).then(Transform.rotation(0.01)).then(Transform.translation(7, 4));
		PrintSheet print = sample.print(PrintOptions.USUAL);
		List<Point> measured = print.plan().orElseThrow().places().stream().map(lies::apply).toList();
		Registration fit = SheetMarks.measured(print.plan().get(), FitKind.SIMILARITY, measured);
		assertEquals(0, fit.rms(), 1e-9);
		LaidSheet laid = cut(false, Optional.of(fit));
		LaidSheet designed = cut(false, Optional.empty());
		List<PreparedElement> moved = laid.content().elements().toList();
		List<PreparedElement> before = designed.content().elements().toList();
		for (int i = 0; i < before.size(); i++) {
			assertTrue(lies.apply(before.get(i).bounds().centre()).distance(moved.get(i).bounds().centre()) < 0.02);
			assertEquals(before.get(i).region().nodeCount(), moved.get(i).region().nodeCount());
		}
		assertTrue(moved.stream().flatMap(each -> each.region().contours().stream()).flatMap(each -> each.segments().stream())
				.anyMatch(Cubic.class::isInstance), "curves stay curves");
		assertTrue(laid.sheet().getWidth() > 207);
	}

	@Test
	void mirroredAndMixedUpMarksAreRefused() {
		PrintSheet print = sample.print(PrintOptions.USUAL);
		List<Point> places = print.plan().orElseThrow().places();
		List<Point> mirrored = places.stream().map(place -> new Point(200 - place.x(), place.y())).toList();
		String why = assertThrows(RegisterException.class,
				() -> SheetMarks.measured(print.plan().get(), FitKind.AFFINE, mirrored)).getMessage();
		assertTrue(why.contains("mirrored"), why);
		List<Point> mixed = List.of(places.get(1), places.get(0), places.get(2), places.get(3));
		assertThrows(RegisterException.class, () -> SheetMarks.measured(print.plan().get(), FitKind.SIMILARITY, mixed));
	}

	@Test
	void aMeasureThatTheSheetKeepsIsUsed() throws RegisterException {
		PrintSheet print = sample.print(PrintOptions.USUAL);
		sample.sheet.getMarks().addAll(SheetMarks.toModel(print.plan().orElseThrow()));
		assertTrue(SheetMarks.kept(sample.sheet, print.plan().get()).isEmpty());
		for (int i : new int[] { 2, 0, 3 }) {
			MeasuredMark mark = FrisketFactory.INSTANCE.createMeasuredMark();
			mark.setMark(i);
			mark.setX(print.plan().get().places().get(i).x() + 5);
			mark.setY(print.plan().get().places().get(i).y() - 2);
			sample.sheet.getMeasured().add(mark);
		}
		Registration fit = SheetMarks.kept(sample.sheet, print.plan().get()).orElseThrow();
		assertTrue(new Point(105, 73).distance(fit.map().apply(new Point(100, 75))) < EXACT);
		sample.sheet.getMeasured().get(0).setMark(9);
		assertThrows(RegisterException.class, () -> SheetMarks.kept(sample.sheet, print.plan().get()));
	}

	@Test
	void aJobWithoutSheetsLiesInTheMiddleOfOne() throws RegisterException {
		Sheet sheet = FrisketFactory.INSTANCE.createSheet();
		sheet.setWidth(200);
		sheet.setHeight(150);
		SheetFaces faces = SheetFaces.bare(SampleJobs.prepared(sample.job), sheet, false, Tolerance.DEFAULT, Monitor.NONE);
		PrintSheet print = PrintSheet.of(faces, PrintOptions.USUAL, Tolerance.DEFAULT, Monitor.NONE);
		assertFalse(PrintAndCut.of(print, Optional.empty(), Optional.empty()).isBlocked(), print.findings().toString());
		LaidSheet laid = PrintAndCut.of(print, Optional.empty(), Optional.empty()).cut(false, false, Tolerance.DEFAULT, Monitor.NONE).orElseThrow();
		assertBox(new Bounds(60, 50, 140, 100), laid.content().elements().findFirst().orElseThrow());
		assertEquals(57, print.bleed().minX(), 0.03);
		sheet.setWidth(70);
		SheetFaces small = SheetFaces.bare(SampleJobs.prepared(sample.job), sheet, false, Tolerance.DEFAULT, Monitor.NONE);
		assertEquals("sheet-too-small", small.findings().get(0).id());
	}

	@Test
	void whereThereIsNoRoomForMarksItIsSaid() {
		sample.sheet.setWidth(84);
		sample.sheet.setHeight(54);
		sample.sheet.getPlacements().get(0).setX(42);
		sample.sheet.getPlacements().get(0).setY(27);
		PrintSheet print = sample.print(PrintOptions.USUAL);
		assertTrue(print.plan().isEmpty());
		assertTrue(print.findings().stream().anyMatch(each -> each.id().equals("marks-no-room") && each.isBlocking()));
	}

	@Test
	void partsOfABackLayerAreNotLaidByThemselves() {
		Layer back = Jobs.addLayer(sample.job, "Back");
		back.setBack(true);
		SampleSheet.outline(back, "M10 0V50", OperationKind.CREASE);
		assertEquals(1, JobParts.of(SampleJobs.prepared(sample.job), false, Tolerance.DEFAULT, Monitor.NONE).size());
	}
}
