package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Flow;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.TextSpan;
import org.frisket.model.Wording;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.FontFitness;
import org.frisket.prepare.fonts.FontLibraries;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A wording in a font of single lines: an H of two stems and a bar, and a closed o. */
class StrokeWordingTest {

	private static final String FONT = """
			<svg><font horiz-adv-x="500"><font-face font-family="Quill" units-per-em="1000"/>
			<glyph unicode="H" horiz-adv-x="600" d="M50 0V700M450 0V700M50 350H450"/>
			<glyph unicode="o" d="M50 200L350 200L350 400L50 400Z"/></font></svg>
			""";

	@TempDir
	private Path folder;
	private final JobPreparer preparer = new JobPreparer(FontLibraries.installed());
	private Job job;
	private Wording wording;
	private Path file;

	@BeforeEach
	void start() throws Exception {
		file = folder.resolve("quill.svg");
		Files.writeString(file, FONT);
		job = Jobs.create("job", "Gift tag");
		wording = Jobs.addWording(Jobs.addLayer(job, "Lettering"), "Ho", 14);
		wording.setFont(Jobs.font("Quill", null, null, file.toString()));
		Jobs.addOperation(wording, OperationKind.DRAW);
	}

	private PreparedElement prepared() {
		return preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE).element(wording.getId()).orElseThrow();
	}

	@Test
	void linesAreDrawnAsTheyAre() {
		PreparedElement drawn = prepared();
		assertEquals(List.of(), drawn.findings());
		assertTrue(drawn.region().isEmpty(), "nothing a blade could go round");
		assertEquals(List.of(14.0, 14.0, 8.0, 20.0),
				drawn.lines().stream().map(line -> Math.round(line.length() * 1e6) / 1e6).toList());
		assertEquals(List.of(false, false, false, true), drawn.lines().stream().map(Contour::isClosed).toList());
		wording.setTracking(3);
		wording.setFlow(Flow.ARC);
		assertEquals(4, prepared().lines().size());
	}

	@Test
	void theyAreNeverCut() {
		wording.getOperations().get(0).setKind(OperationKind.CUT);
		PreparedElement cut = prepared();
		assertEquals(List.of(JobPreparer.PEN_LETTERING_CUT), cut.findings().stream().map(Finding::id).toList());
		assertTrue(cut.findings().get(0).isBlocking());
		assertEquals(List.of(), cut.operations());
	}

	@Test
	void whatHoldsOtherLettersDoesThemNoHarm() {
		wording.setJoined(true);
		wording.setTieMarks(true);
		wording.setStencil(1);
		wording.setEmbolden(0.3);
		assertEquals(4, prepared().lines().size());
		assertEquals(List.of(), prepared().findings());
	}

	@Test
	void matsFollowThem() {
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 2, List.of(wording));
		var region = preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE).element(mat.getId()).orElseThrow().region();
		assertEquals(14 + 2 * (2 + 0.25), region.bounds().height(), 0.02);
	}

	@Test
	void besideOtherLettersAllIsDrawn() {
		wording.setText("Ho I");
		TextSpan span = FrisketFactory.INSTANCE.createTextSpan();
		span.setStart(3);
		span.setEnd(4);
		span.setFont(Jobs.font("Liberation Sans", "Regular", null, null));
		wording.getSpans().add(span);
		assertTrue(prepared().region().isEmpty());
		assertEquals(5, prepared().lines().size());
		assertTrue(prepared().isPenLettering());
	}

	@Test
	void theyAreNotRankedAmongFontsToCut() throws Exception {
		FontFitness.Ranking ranking = new FontFitness(FontLibraries.installed(), "Ho", 14, Tolerance.DEFAULT)
				.of(List.of(file.toString(), "Liberation Sans"), Limits.CARD, Monitor.NONE);
		assertEquals(1, ranking.fonts().size());
		assertEquals(List.of("Quill is a font of single lines, which are not cut"), ranking.leftOut());
		assertFalse(ranking.fonts().get(0).name().contains("Quill"));
	}
}
