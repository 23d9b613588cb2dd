package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.measure.ThinStrokes;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.Fitness;
import org.frisket.prepare.fonts.FontFitness;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.testkit.SampleJobs;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The letters of Liberation Sans: I is a plain bar, O a ring of two smooth curves. */
class FitnessTest {

	private static SetText set(String text, String font, double height) {
		return TextSetter.set(text, SampleJobs.face(font), Setting.ofCapHeight(height), Monitor.NONE);
	}

	private static Fitness fitness(String text, double height) {
		return Fitness.of(set(text, "Liberation Sans", height), Limits.CARD, Tolerance.DEFAULT, Monitor.NONE);
	}

	@Test
	void barsAreMeasuredExactly() {
		SetText bars = set("II", "Liberation Sans", 20);
		double width = bars.letters().get(0).outline().bounds().width();
		double gap = bars.letters().get(1).outline().bounds().minX() - bars.letters().get(0).outline().bounds().maxX();
		Fitness fitness = Fitness.of(bars, Limits.CARD, Tolerance.DEFAULT, Monitor.NONE);
		assertEquals(2, fitness.pieces());
		assertEquals(width, fitness.thinnestStroke().orElseThrow().value(), 0.02);
		assertEquals(gap, fitness.narrowestGap().orElseThrow().value(), 0.02);
		assertEquals(90, fitness.sharpestPoint().orElseThrow().value(), 1e-6);
		assertEquals(20, fitness.smallestPiece().orElseThrow().value(), 0.02);
		assertEquals(Optional.empty(), fitness.smallestCounter());
		assertEquals(gap / 2 + bars.letters().get(0).outline().bounds().maxX(),
				fitness.narrowestGap().orElseThrow().place().x(), 0.05);
	}

	@Test
	void counterOfARingIsItsInnerWidth() {
		SetText ring = set("O", "Liberation Sans", 20);
		double inner = ring.outline().contours().stream().mapToDouble(c -> c.bounds().width()).min().orElseThrow();
		assertEquals(inner, fitness("O", 20).smallestCounter().orElseThrow().value(), 0.05);
		assertEquals(Optional.empty(), fitness("O", 20).narrowestGap());
	}

	@Test
	void dotsOfOneLetterAreNoGapBetweenLetters() {
		assertEquals(Optional.empty(), fitness("i", 20).narrowestGap());
		assertTrue(fitness("ii", 20).narrowestGap().isPresent());
	}

	@Test
	void sharpPointsAreFoundAtTheirPlace() {
		Fitness fitness = fitness("A", 20);
		double angle = fitness.sharpestPoint().orElseThrow().value();
		assertTrue(angle > 20 && angle < 90, "angle " + angle);
	}

	@Test
	void smallestHeightIsWhereTheChecksBeginToPass() {
		Limits limits = Limits.CARD;
		for (String text : List.of("Harbour", "ferry", "i")) {
			double least = fitness(text, 30).smallestHeight().orElseThrow();
			assertTrue(passes(text, 1.01 * least, limits), text);
			assertFalse(passes(text, 0.97 * least, limits), text);
		}
	}

	/** What only just counts as thin at one height need not at another, as the tolerance does not grow along. */
	@Test
	void smallestHeightIsNeverTooSmall() {
		for (String text : List.of("8 gifts", "Quay & Lane", "50% off")) {
			double least = fitness(text, 30).smallestHeight().orElseThrow();
			assertTrue(passes(text, 1.01 * least, Limits.CARD), text);
			assertFalse(passes(text, 0.8 * least, Limits.CARD), text);
		}
	}

	@Test
	void smallestHeightIsTheSameFromAnyHeight() {
		double fromSmall = fitness("Harbour", 15).smallestHeight().orElseThrow();
		double fromLarge = fitness("Harbour", 60).smallestHeight().orElseThrow();
		assertEquals(fromLarge, fromSmall, 0.02 * fromLarge);
	}

	/**
	 * Of a wording in a job, by the checks themselves: one per cent above the least height nothing of its letters is too
	 * thin or too small, one per cent below something is. The tolerance is as fine as a per cent of a stroke asks for.
	 */
	@ParameterizedTest
	@CsvSource({ "Harbour, Liberation Sans", "ferry, Liberation Sans", "Quay 7, DejaVu Sans Bold", "tea, DejaVu Sans Bold",
			"Lane, Liberation Serif", "pier, Liberation Serif", "oban, DejaVu Sans" })
	void makereadyAgreesWithTheLeastHeightToOnePerCent(String text, String font) {
		Tolerance fine = new Tolerance(0.005);
		double least = Fitness.of(set(text, font, 30), Limits.CARD, fine, Monitor.NONE).smallestHeight().orElseThrow();
		assertEquals(Set.of(), ofLetters(text, font, 1.01 * least, fine), font + " " + least);
		assertNotEquals(Set.of(), ofLetters(text, font, 0.99 * least, fine), font + " " + least);
	}

	private static Set<String> ofLetters(String text, String font, double height, Tolerance tolerance) {
		Job job = Jobs.create("least", "Least height");
		Wording wording = Jobs.addWording(Jobs.addLayer(job, "Card"), text, height);
		wording.setFont(Jobs.font(font, null, null, null));
		Jobs.addOperation(wording, OperationKind.CUT);
		PreparedJob prepared = new JobPreparer(FontLibraries.installed()).prepare(job, tolerance, Monitor.NONE);
		return Makeready.findings(prepared, Limits.CARD, tolerance, Monitor.NONE).stream().map(Finding::id)
				.filter(Set.of("stroke-too-thin", "piece-too-small", "hole-too-small")::contains).collect(Collectors.toSet());
	}

	private static boolean passes(String text, double height, Limits limits) {
		Region region = region(text, height);
		double shortest = region.pieces().stream()
				.mapToDouble(piece -> Math.max(piece.bounds().width(), piece.bounds().height())).min().orElseThrow();
		return shortest >= limits.smallestPiece() && ThinStrokes
				.of(region, limits.thinnestStroke(), Tolerance.DEFAULT, Memory.NONE, Monitor.NONE).isEmpty();
	}

	private static Region region(String text, double height) {
		return new OutlineCleaner().clean(set(text, "Liberation Sans", height).outline(), FillRule.NON_ZERO,
				Tolerance.DEFAULT, Monitor.NONE).region();
	}

	@Test
	void heavierFontsAreFitter() throws Exception {
		FontFitness.Ranking ranking = new FontFitness(FontLibraries.installed(), "Quay", 20, Tolerance.DEFAULT)
				.of(List.of("Liberation Serif", "DejaVu Sans Bold", "Liberation Sans"), Limits.CARD, Monitor.NONE);
		assertEquals(List.of("DejaVu Sans Bold", "Liberation Sans", "Liberation Serif"),
				ranking.fonts().stream().map(FontFitness.Font::name).toList());
		assertTrue(ranking.fonts().get(1).file().endsWith("LiberationSans-Regular.ttf"), ranking.fonts().get(1).file());
	}

	@Test
	void fontsWithoutTheCharactersAreLeftOut() throws Exception {
		FontFitness.Ranking ranking = new FontFitness(FontLibraries.installed(), "\uA66E", 20, Tolerance.DEFAULT)
				.of(List.of("Liberation Mono"), Limits.CARD, Monitor.NONE);
		assertEquals(List.of(), ranking.fonts());
		assertTrue(ranking.leftOut().get(0).contains("Liberation Mono"));
	}
}
