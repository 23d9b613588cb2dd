package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.frisket.export.Exporters;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.MeasuredMark;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.print.measure.KeptMeasures;
import org.junit.jupiter.api.Test;

class JobPrintsTest {

	private final SampleSheet sample = new SampleSheet();

	private JobPrints prints() {
		return JobPrints.of(sample.job, null, new JobPreparer(FontLibraries.installed()), Tolerance.DEFAULT, Monitor.NONE);
	}

	private void measure(double dx, double dy) {
		PrintSheet print = sample.print(PrintOptions.USUAL);
		sample.sheet.getMarks().addAll(SheetMarks.toModel(print.plan().orElseThrow()));
		for (int i = 0; i < 4; i++) {
			MeasuredMark mark = FrisketFactory.INSTANCE.createMeasuredMark();
			mark.setMark(i);
			mark.setX(print.plan().get().places().get(i).x() + dx);
			mark.setY(print.plan().get().places().get(i).y() + dy);
			sample.sheet.getMeasured().add(mark);
		}
	}

	@Test
	void cutsFollowTheMeasureThatTheSheetKeeps() {
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		assertTrue(prints().sheet(1, PrintOptions.USUAL, Monitor.NONE).fit().isEmpty());
		measure(5, -2);
		PrintAndCut sheet = prints().sheet(1, PrintOptions.USUAL, Monitor.NONE);
		assertEquals(0, sheet.fit().orElseThrow().rms(), 1e-9);
		assertFalse(sheet.isBlocked());
	}

	/** Whether the sheet is turned over its side or its head, the places that were measured are the same ones. */
	@Test
	void workOfTheBackFollowsTheMeasureOfTheBack() throws Exception {
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		Layer back = Jobs.addLayer(sample.job, "Back");
		back.setBack(true);
		SampleSheet.outline(back, "M30 0V50", OperationKind.CREASE);
		measure(5, -2);
		PrintAndCut frontOnly = prints().sheet(1, PrintOptions.USUAL, Monitor.NONE);
		assertTrue(frontOnly.findings().stream().anyMatch(each -> each.id().equals("back-not-measured")));
		assertFalse(roles(frontOnly).contains(PrintAndCut.Role.CUT_BACK));
		PrintSheet print = sample.print(PrintOptions.USUAL);
		List<Optional<Point>> places = TurnEdge.SIDE.over(print.plan().orElseThrow()).places().stream()
				.map(place -> Optional.of(new Point(place.x() + 1, place.y() + 3))).toList();
		List<MeasuredMark> both = KeptMeasures.with(sample.sheet, true, places);
		sample.sheet.getMeasured().clear();
		sample.sheet.getMeasured().addAll(both);
		for (TurnEdge turn : TurnEdge.values()) {
			PrintAndCut sheet = prints().sheet(1, new PrintOptions(3, false, turn, true, true, false, Optional.empty()),
					Monitor.NONE);
			assertTrue(sheet.findings().stream().noneMatch(each -> each.id().equals("back-not-measured")));
			assertTrue(roles(sheet).contains(PrintAndCut.Role.CUT_BACK));
			Bounds crease = sheet.cut(true, false, Tolerance.DEFAULT, Monitor.NONE).orElseThrow().content().elements().findFirst()
					.orElseThrow().bounds();
			assertEquals(200 - 90 + 1, crease.minX(), 1e-6, turn.name());
			assertEquals(50 + 3, crease.minY(), 1e-6, turn.name());
			assertEquals(100 + 3, crease.maxY(), 1e-6, turn.name());
		}
	}

	private static Set<PrintAndCut.Role> roles(PrintAndCut sheet) {
		return sheet.targets(Path.of("sheet"), Exporters.forFile(".svg").orElseThrow()).keySet();
	}

	@Test
	void aMeasureThatCannotBeBlocksAndSaysSo() {
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		measure(0, 0);
		sample.sheet.getMeasured().get(0).setMark(9);
		PrintAndCut sheet = prints().sheet(1, PrintOptions.USUAL, Monitor.NONE);
		assertTrue(sheet.isBlocked());
		assertEquals(List.of("measure-unfit"), sheet.findings().stream().filter(each -> each.isBlocking()).map(each -> each.id()).toList());
	}

	@Test
	void nothingIsWorkedOutTwice() {
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		JobPrints prints = prints();
		PrintAndCut first = prints.sheet(1, PrintOptions.USUAL, Monitor.NONE);
		assertSame(first, prints.sheet(1, PrintOptions.USUAL, Monitor.NONE));
		PrintOptions wide = new PrintOptions(5, false, TurnEdge.SIDE, true, true, false, Optional.empty());
		assertEquals(55, prints.sheet(1, wide, Monitor.NONE).print().bleed().minX(), 0.03);
		assertEquals(57, prints.sheet(1, PrintOptions.USUAL, Monitor.NONE).print().bleed().minX(), 0.03);
	}

	@Test
	void linesToLookAtLieInsideTheCut() throws Exception {
		Picture picture = sample.picture(80, 50);
		picture.setEdge(FrisketFactory.INSTANCE.createPictureEdge());
		picture.getEdge().setBorder(2);
		SheetFaces faces = sample.faces(false);
		// the border of the picture reaches beyond the cut, and moves the card on the sheet
		Bounds cut = faces.items(false).stream().map(FaceItem::element).filter(each -> each.has(OperationKind.CUT)).findFirst()
				.orElseThrow().bounds();
		SheetGuides guides = SheetGuides.of(faces, 3, Tolerance.DEFAULT, Monitor.NONE);
		assertEquals(1, guides.safe().size());
		Outline safe = guides.safe().get(0);
		assertEquals(cut.minX() + 3, safe.bounds().minX(), 0.03);
		assertEquals(cut.maxY() - 3, safe.bounds().maxY(), 0.03);
		assertEquals(1, guides.borders().size());
	}

	@Test
	void workIsToldWithoutThePrint() throws Exception {
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		SampleSheet.outline(sample.layer, "M40 0V50", OperationKind.CREASE);
		List<WorkLine> lines = WorkLine.of(prints().sheet(1, PrintOptions.USUAL, Monitor.NONE)
				.cut(false, true, Tolerance.DEFAULT, Monitor.NONE).orElseThrow());
		assertEquals(List.of(OperationKind.CUT, OperationKind.CREASE), lines.stream().map(WorkLine::kind).toList());
		assertEquals(60, lines.get(0).curves().bounds().minX(), 1e-9);
	}
}
