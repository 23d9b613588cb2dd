package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Alignment;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Composition;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.Limits;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.Test;

/** Whatever is pasted into a wording goes all the way to regions and findings. */
class StrangeTextTest {

	private static final FontLibrary LIBRARY = new FontLibrary(List.of(new EmbeddedFontSource()));

	private record Result(Region region, List<String> findings) {
	}

	private static Result prepare(String text, double height) throws Exception {
		PreparedJob prepared = new JobPreparer(LIBRARY).prepare(new Composition(text, LIBRARY.find("Liberation Serif"),
				height, Alignment.LEFT, OptionalDouble.empty(), List.of(), OperationKind.CUT).toJob(), Tolerance.DEFAULT,
				Monitor.NONE);
		return new Result(prepared.elements().findFirst().orElseThrow().region(),
				Makeready.findings(prepared, Limits.CARD, Tolerance.DEFAULT, Monitor.NONE).stream().map(Finding::id).toList());
	}

	@Test
	void tenThousandCharactersArePrepared() throws Exception {
		String line = "Harbour Lane Paperworks\n";
		Result one = prepare(line, 20);
		Result all = prepare(line.repeat(10_000 / line.length() + 1), 20);
		int times = 10_000 / line.length() + 1;
		assertEquals(times * one.region().area(), all.region().area(), 1e-4 * all.region().area());
		assertEquals(times * one.region().pieces().size(), all.region().pieces().size());
	}

	@Test
	void charactersWithoutGlyphsAreFoundAndTheRestIsCut() throws Exception {
		Result plain = prepare("Harbour", 20);
		for (String strange : List.of("\uD83D\uDE00", "\uD83D\uDC69\u200D\uD83D\uDC67", "\uD83C\uDDE9\uD83C\uDDEA", "\uD83D",
				"\uDE00", "\uFFFF", "\uE000")) {
			Result result = prepare("Harbour" + strange, 20);
			assertEquals(plain.region(), result.region(), strange);
			assertTrue(result.findings().contains("glyph-missing"), result.findings().toString());
		}
	}

	@Test
	void controlCharactersAreBlanks() throws Exception {
		Result plain = prepare("Harbour Lane", 20);
		for (char control : new char[] { 0, 1, 7, '\t', 0x1B, 0x7F, 0x9F }) {
			Result result = prepare("Harbour" + control + "Lane", 20);
			assertEquals(plain, result, "control character " + (int) control);
		}
	}

	@Test
	void anyCharactersAreSurvived() throws Exception {
		Random random = new Random(40);
		for (int i = 0; i < 12; i++) {
			StringBuilder text = new StringBuilder();
			for (int n = 1 + random.nextInt(30); n > 0; n--) {
				text.append((char) (random.nextInt(3) > 0 ? random.nextInt(0x3000) : random.nextInt(0x10000)));
			}
			Result result = prepare(text.toString(), 5 + random.nextInt(40));
			assertTrue(Double.isFinite(result.region().area()) && result.region().area() >= 0);
		}
	}
}
