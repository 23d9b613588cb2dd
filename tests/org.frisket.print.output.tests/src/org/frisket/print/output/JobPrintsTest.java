package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Tolerance;
import org.frisket.model.FrisketFactory;
import org.frisket.model.MeasuredMark;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.prepare.FontLibraries;
import org.frisket.prepare.JobPreparer;
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
		SheetGuides guides = SheetGuides.of(sample.faces(false), 3, Tolerance.DEFAULT, Monitor.NONE);
		assertEquals(1, guides.safe().size());
		Outline safe = guides.safe().get(0);
		assertEquals(63, safe.bounds().minX(), 0.03);
		assertEquals(97, safe.bounds().maxY(), 0.03);
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
