package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;

import org.frisket.editing.wording.ChangeSpan;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.PenStyle;
import org.frisket.model.Wording;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.fonts.FontTrial;
import org.frisket.prepare.fonts.FontVerdict;
import org.frisket.testkit.SampleJobs;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.source.FontEntry;
import org.junit.jupiter.api.Test;

/** What the rows of a font list say, measured again by other means where that is possible. */
class FontTrialTest {

	private final Job job = Jobs.create("pier", "Pier signs");

	private Wording wording(String text, double height) {
		Wording wording = Jobs.addWording(Jobs.addLayer(job, "Card"), text, height);
		wording.setFont(Jobs.font("DejaVu Sans", null, null, null));
		Jobs.addOperation(wording, OperationKind.CUT);
		return wording;
	}

	private static FontEntry entry(String family, String style) {
		return FontLibraries.installed().sources().stream().flatMap(source -> source.fonts(Monitor.NONE).stream())
				.filter(font -> font.family().equals(family) && font.style().equals(style)).findFirst().orElseThrow();
	}

	private static FontTrial trial(Wording wording) {
		return new FontTrial(wording, ChangeWording::font, StockLimits.BUILT_IN, Tolerance.DEFAULT);
	}

	private static FontVerdict verdict(Wording wording) {
		return trial(wording).of(entry("Liberation Sans", "Regular"), Monitor.NONE);
	}

	@Test
	void fontThatCutsSaysSoWithItsFigures() {
		Wording wording = wording("II", 30);
		FontVerdict verdict = verdict(wording);
		assertEquals(FontVerdict.Kind.CUTS, verdict.kind());
		assertEquals("cuts", verdict.word());
		var face = SampleJobs.face("Liberation Sans");
		double x = 30 * face.xHeight() / face.capHeight();
		assertEquals(x, verdict.xHeight().orElseThrow(), 1e-9);
		double stroke = 30 * face.outline(face.glyph('I')).bounds().width() / face.capHeight();
		assertTrue(verdict.facts().matches("2 pieces · x [\\d.]+ mm · stroke [\\d.]+ mm"), verdict.facts());
		assertEquals(stroke, Double.parseDouble(verdict.facts().replaceAll(".*stroke ([\\d.]+) mm", "$1")), 0.03);
	}

	@Test
	void heightThatIsNamedIsTheOneFromWhichItCuts() {
		Wording wording = wording("Harbour", 6);
		String word = verdict(wording).word();
		assertTrue(word.matches("not below [\\d.]+ mm"), word);
		double least = Double.parseDouble(word.replaceAll("[^\\d.]", ""));
		wording.setHeight(least);
		assertEquals("cuts", verdict(wording).word());
		wording.setHeight(0.95 * least);
		assertEquals(FontVerdict.Kind.CAUTION, verdict(wording).kind());
	}

	@Test
	void scaleOfTheWordingCounts() {
		Wording wording = wording("Harbour", 6);
		wording.setTransform(new Matrix(0, 5, -5, 0, 3, 4));
		assertEquals("cuts", verdict(wording).word());
	}

	@Test
	void whatIsDoneToTheLettersCountsAndNoHeightIsForetoldThen() {
		Wording wording = wording("HILL", 6);
		wording.setEmbolden(0.05);
		String thin = verdict(wording).word();
		assertTrue(thin.matches("caution: stroke 0\\.\\d+ mm"), thin);
		wording.setEmbolden(0.2);
		assertEquals("cuts", verdict(wording).word());
	}

	@Test
	void smallPieceIsNamedWhereTheStrokesAreSound() {
		Wording wording = wording(".", 8);
		wording.setTracking(1);
		String word = verdict(wording).word();
		assertTrue(word.matches("caution: piece 1\\.\\d+ mm"), word);
	}

	@Test
	void stockOfTheLayerDecides() {
		Wording wording = wording("Harbour", 12);
		assertEquals(Limits.CARD, StockLimits.BUILT_IN.limits("card").orElseThrow());
		String card = verdict(wording).word();
		Jobs.layerOf(wording).setStock("unheard of");
		assertEquals(card, verdict(wording).word());
		Jobs.layerOf(wording).setStock("film");
		assertEquals("cuts", verdict(wording).word());
		Jobs.layerOf(wording).setStock("heavy-card");
		assertEquals(FontVerdict.Kind.CAUTION, verdict(wording).kind());
	}

	@Test
	void singleLinesAreOnlyDrawn() {
		Wording wording = wording("Harbour", 30);
		FontEntry lines = FontLibraries.installed().sources().stream()
				.flatMap(source -> source.fonts(Monitor.NONE).stream()).filter(FontTrialTest::isStroke).findFirst()
				.orElseThrow();
		FontVerdict verdict = trial(wording).of(lines, Monitor.NONE);
		assertEquals("draw only", verdict.word());
		assertTrue(verdict.facts().startsWith("x "), verdict.facts());
		wording.setPenStyle(PenStyle.HATCHED);
		assertEquals(FontVerdict.Kind.DRAW_ONLY, verdict(wording).kind());
	}

	private static boolean isStroke(FontEntry font) {
		try {
			return font.open().isStroke();
		} catch (UnreadableFontException e) {
			return false;
		}
	}

	@Test
	void lackingCharacterIsNamed() {
		FontVerdict verdict = verdict(wording("Pier \uA66E", 30));
		assertEquals(FontVerdict.Kind.UNFIT, verdict.kind());
		assertTrue(verdict.word().startsWith("lacks "), verdict.word());
		assertEquals("nothing to cut", verdict(wording(" ", 30)).word());
	}

	@Test
	void unreadableFontSaysSo() {
		FontEntry broken = new FontEntry(new FontNames("Quayside", "Regular", "Quayside", ""), "quayside.ttf", () -> {
			throw new UnreadableFontException("quayside.ttf", "it is cut short");
		}, () -> "");
		assertEquals("cannot be read", trial(wording("Pier", 30)).of(broken, Monitor.NONE).word());
	}

	/** Liberation fonts are under the SIL Open Font License 1.1 and have fsType 0 or 8 by their OS/2 tables. */
	@Test
	void licenceAndEmbeddingAreToldWithTheCautionThatTheLicenceDecides() throws Exception {
		FontVerdict verdict = verdict(wording("Pier", 30));
		assertTrue(verdict.licence().contains("Open Font License"), verdict.licence());
		assertTrue(verdict.embedding().startsWith("embedding: "), verdict.embedding());
		assertTrue(verdict.small().contains("whether letters may be cut and sold is for the licence to say"),
				verdict.small());
		assertTrue(verdict.small().endsWith("\n" + verdict.licence()), verdict.small());
	}

	@Test
	void lettersOfTheirOwnFontKeepIt() {
		Wording wording = wording("II", 30);
		FontTrial second = new FontTrial(wording, (w, font) -> ChangeSpan.font(w, 1, 2, font), StockLimits.BUILT_IN,
				Tolerance.DEFAULT);
		double thin = stroke(second.of(entry("Liberation Sans", "Bold"), Monitor.NONE));
		wording.setFont(Jobs.font("Liberation Sans", null, null, null));
		FontTrial both = trial(wording);
		assertTrue(thin < stroke(both.of(entry("Liberation Sans", "Bold"), Monitor.NONE)) - 0.5);
	}

	private static double stroke(FontVerdict verdict) {
		return Double.parseDouble(verdict.facts().replaceAll(".*stroke ([\\d.]+) mm", "$1"));
	}

	@Test
	void wordingOnAPathIsTriedOnItsPathAndTheJobStaysAsItIs() throws IOException {
		Wording wording = wording("Harbour", 30);
		Outline path = Jobs.addOutline(Jobs.layerOf(wording), "M0 0C60 -80 140 80 260 0");
		wording.setPath(path);
		byte[] before = JobFile.toBytes(job);
		FontTrial trial = trial(wording);
		assertEquals("cuts", trial.of(entry("Liberation Sans", "Regular"), Monitor.NONE).word());
		assertArrayEquals(before, JobFile.toBytes(job));
	}

	@Test
	void fittestFirstAndWhatCannotBeSaidLast() {
		Wording wording = wording("Quay", 9);
		FontTrial trial = trial(wording);
		List<FontVerdict> verdicts = Stream
				.of(entry("Liberation Serif", "Regular"), entry("DejaVu Sans", "Bold"), entry("Liberation Sans", "Regular"))
				.map(font -> trial.of(font, Monitor.NONE)).toList();
		assertEquals(List.of(verdicts.get(1), verdicts.get(2), verdicts.get(0)),
				verdicts.stream().sorted(FontVerdict.FITTEST).toList());
		double[] tall = verdicts.stream().sorted(FontVerdict.TALLEST).mapToDouble(v -> v.xHeight().orElseThrow()).toArray();
		assertTrue(tall[0] > tall[1] && tall[1] > tall[2]);
	}

	@Test
	void cancelStopsIt() {
		FontTrial trial = trial(wording("Pier", 30));
		FontEntry font = entry("Liberation Sans", "Regular");
		assertThrows(CancellationException.class, () -> trial.of(font, () -> true));
	}
}
