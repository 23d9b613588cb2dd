package org.frisket.print.output.direct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Sheet;
import org.frisket.prepare.Finding;
import org.frisket.print.output.PrintOptions;
import org.frisket.print.output.PrintSheet;
import org.frisket.print.output.SheetFaces;
import org.frisket.print.register.PrinterProfile;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;

class PaperChecksTest {

	private static final double UNITS = 300 / 25.4;

	/** A card of 80 by 50 mm in the middle of a sheet. */
	private static PrintSheet sheet(double width, double height) {
		Job job = Jobs.create("job", "Place card");
		job.setNumber("10247");
		Layer layer = Jobs.addLayer(job, "Card");
		Outline card = Jobs.addOutline(layer, "M0 0H80V50H0Z");
		Jobs.addOperation(card, OperationKind.CUT);
		Jobs.addOperation(card, OperationKind.PRINT);
		Sheet sheet = Jobs.addSheet(job, null, width, height);
		Jobs.addPlacement(sheet, card.getId(), width / 2, height / 2, 0);
		SheetFaces faces = SheetFaces.of(job, Map.of(job.getId(), SampleJobs.prepared(job)), false, Tolerance.DEFAULT, Monitor.NONE)
				.get(0);
		return PrintSheet.of(faces, PrintOptions.USUAL, Tolerance.DEFAULT, Monitor.NONE);
	}

	/** @param margin that the printer leaves bare, mm */
	private static PaperPlace paper(double width, double height, double margin) {
		double bare = Math.floor(margin * UNITS);
		double right = Math.floor(width * UNITS) - bare;
		double low = Math.floor(height * UNITS) - bare;
		return new PaperPlace(300, 300, new Bounds(-bare, -bare, right, low), new Bounds(0, 0, right - bare, low - bare));
	}

	private static List<String> found(PrintSheet sheet, PaperPlace place) {
		return PaperChecks.of(sheet, false, place).stream().map(Finding::id).toList();
	}

	@Test
	void aSheetOnItsOwnPaperIsRight() {
		assertEquals(List.of(), found(sheet(210, 297), paper(210, 297, 4)));
	}

	@Test
	void marksThatWouldBeCutOffAndOtherPaperAreSaid() {
		PrintSheet sheet = sheet(210, 297);
		List<Finding> margins = PaperChecks.of(sheet, false, paper(210, 297, 12));
		assertEquals(List.of("mark-cut-off"), margins.stream().map(Finding::id).toList());
		assertTrue(margins.get(0).isBlocking());
		assertTrue(margins.get(0).cure().contains("borderless") && margins.get(0).cure().contains("12 mm"), margins.get(0).cure());
		String larger = PaperChecks.of(sheet, false, paper(148, 210, 4)).get(0).cure();
		assertTrue(larger.startsWith("Choose larger paper"), larger);
		assertEquals(List.of("mark-cut-off", "other-paper"), found(sheet, paper(148, 210, 4)));
		assertEquals(List.of("other-paper"), found(sheet, paper(297, 420, 4)));
		String said = PaperChecks.of(sheet, false, paper(148, 210, 4)).get(1).message();
		assertTrue(said.contains("148 × 210 mm") && said.contains("210 × 297 mm"), said);
	}

	/** The art for a printer that prints short is larger than the sheet was designed, and goes beyond what just did. */
	@Test
	void marksAreWhereTheyAreSentTo() {
		PrintSheet sheet = sheet(210, 297);
		double left = sheet.plan().orElseThrow().marks().stream().mapToDouble(mark -> mark.bounds().minX()).min().orElseThrow();
		PaperPlace just = paper(210, 297, left - 0.2);
		assertEquals(List.of(), found(sheet, just));
		PrinterProfile shortened = new PrinterProfile("Hall printer", 0.99, 0.99, 0, LocalDate.of(2026, 11, 3), 4);
		PrintSheet larger = PrintSheet.of(sheet.faces(), PrintOptions.USUAL.on(shortened), Tolerance.DEFAULT, Monitor.NONE);
		assertEquals(List.of("mark-cut-off"), found(larger, just));
		assertEquals(List.of("mark-cut-off"), PaperChecks.of(larger, true, just).stream().map(Finding::id).toList());
	}

	/** Whether a driver scales is seen on the line alone. */
	@Test
	void aPrintThatCannotBeMeasuredIsSaid() {
		PrintSheet sheet = sheet(210, 297);
		PrintSheet without = new PrintSheet(sheet.faces(), sheet.options(), sheet.front(), sheet.back(), sheet.plan(), sheet.proposed(),
				sheet.code(), Optional.empty(), sheet.trim(), sheet.bleed(), sheet.findings());
		assertEquals(List.of("scale-untold"), found(without, paper(210, 297, 4)));
	}
}
