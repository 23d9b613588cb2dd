package org.frisket.cli.lettering;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import org.frisket.cli.Frisket;
import org.frisket.geometry.Point;
import org.frisket.model.Alignment;
import org.frisket.model.BarKind;
import org.frisket.model.Flow;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.PenStyle;
import org.frisket.model.Wording;
import org.frisket.page.chart.ChartLayout;
import org.frisket.page.chart.ChartPages;
import org.frisket.prepare.layout.Paper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** Setting and judging lettering on the command line. */
class LetteringVerbsTest {

	@TempDir
	private Path folder;

	private record Answer(int status, String out, String err) {
	}

	private static Answer frisket(String... arguments) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(arguments, new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		return new Answer(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	private Answer compose(String... more) {
		List<String> arguments = new ArrayList<>(List.of("compose", "--text", "Quay fi", "--font", "Liberation Serif",
				"--out", folder.resolve("x.frjob").toString()));
		arguments.addAll(Arrays.asList(more));
		return frisket(arguments.toArray(String[]::new));
	}

	private Wording wording(String... more) throws Exception {
		Answer answer = compose(more);
		assertEquals(0, answer.status(), answer.toString());
		return Jobs.elements(JobFile.load(folder.resolve("x.frjob"))).stream().filter(Wording.class::isInstance)
				.map(Wording.class::cast).findFirst().orElseThrow();
	}

	private void assertRefused(Answer answer, String... words) throws IOException {
		assertEquals(2, answer.status(), answer.toString());
		assertEquals("", answer.out());
		assertEquals(1, answer.err().lines().count(), answer.err());
		for (String word : words) {
			assertTrue(answer.err().contains(word), answer.err());
		}
		assertFalse(answer.err().contains("mistake of the program"), answer.err());
		try (Stream<Path> files = Files.list(folder)) {
			assertEquals(List.of(), files.toList());
		}
	}

	@Test
	void settingIsKeptInTheJob() throws Exception {
		Wording set = wording("--height", "20mm", "--features", "smcp, -kern", "--tracking", "-0.1mm", "--word-space",
				"2mm", "--line-space", "1.4", "--align", "justify", "--measure", "90mm", "--embolden", "0.2mm", "--tie",
				"1mm", "--underline", "2mm", "--stencil", "0.8mm");
		assertEquals("smcp,-kern", set.getFeatures());
		assertEquals(-0.1, set.getTracking());
		assertEquals(2, set.getWordSpacing());
		assertEquals(1.4, set.getLineSpacing());
		assertEquals(Alignment.JUSTIFY, set.getAlignment());
		assertEquals(90, set.getMeasure());
		assertEquals(0.2, set.getEmbolden());
		assertTrue(set.isTieMarks());
		assertEquals(1, set.getTieWidth());
		assertEquals(BarKind.UNDERLINE, set.getBars().get(0).getKind());
		assertEquals(2, set.getBars().get(0).getThickness());
		assertEquals(0.8, set.getStencil());
		assertEquals(OperationKind.CUT, set.getOperations().get(0).getKind());
	}

	@Test
	void lineSpaceMayBeALength() throws Exception {
		assertEquals(1.5, wording("--height", "20mm", "--line-space", "30mm").getLineSpacing(), 1e-12);
	}

	@Test
	void flowIsKeptInTheJob() throws Exception {
		Wording arc = wording("--height", "20mm", "--arc", "70mm", "--inside");
		assertEquals(Flow.ARC, arc.getFlow());
		assertEquals(70, arc.getArcRadius());
		assertTrue(arc.isArcInside());
		assertEquals(Alignment.CENTRE, arc.getAlignment());
		assertEquals(Alignment.LEFT, wording("--height", "20mm", "--arc", "70mm", "--align", "left").getAlignment());
		assertEquals(Flow.STACKED, wording("--height", "20mm", "--stacked").getFlow());
		Wording fit = wording("--fit", "100x40mm");
		assertEquals(100, fit.getBoxWidth());
		assertEquals(40, fit.getBoxHeight());
		assertEquals(101.6, wording("--fit", "4in x 2 in").getBoxWidth(), 1e-9);
	}

	@Test
	void whatFitsABoxIsAsWideAsIt() {
		assertTrue(compose("--fit", "100x40mm").out().contains("100 mm × "), compose("--fit", "100x40mm").out());
	}

	@Test
	void penLetteringIsDrawnAndItsMatsAreCut() throws Exception {
		Wording centre = wording("--height", "20mm", "--centreline", "--mat", "3mm");
		assertEquals(PenStyle.CENTRELINE, centre.getPenStyle());
		assertEquals(List.of(OperationKind.DRAW), centre.getOperations().stream().map(o -> o.getKind()).toList());
		assertEquals(OperationKind.CUT, Jobs.matsOf(centre).get(0).getOperations().get(0).getKind());
		Wording hatched = wording("--height", "20mm", "--hatch", "0.8mm");
		assertEquals(PenStyle.HATCHED, hatched.getPenStyle());
		assertEquals(0.8, hatched.getHatchSpacing());
		assertEquals(List.of(OperationKind.DRAW), hatched.getOperations().stream().map(o -> o.getKind()).toList());
	}

	@Test
	void sameCommandMakesTheSameBytes() throws Exception {
		String[] options = { "--height", "20mm", "--arc", "80mm", "--touch", "0.3mm", "--hatch", "1mm", "--tie", "1mm" };
		wording(options);
		byte[] first = Files.readAllBytes(folder.resolve("x.frjob"));
		wording(options);
		assertArrayEquals(first, Files.readAllBytes(folder.resolve("x.frjob")));
	}

	@Test
	void wrongUseIsRefused() throws Exception {
		assertRefused(compose(), "--height");
		assertRefused(compose("--height", "20mm", "--features", "small caps"), "feature", "small");
		assertRefused(compose("--height", "20mm", "--axis", "wght"), "wght");
		assertRefused(compose("--height", "20mm", "--axis", "wght=700"), "Liberation Serif", "no axis wght");
		assertRefused(compose("--height", "20mm", "--line-space", "0"), "above zero");
		assertRefused(compose("--height", "20mm", "--line-space", "wide"), "wide");
		assertRefused(compose("--height", "20mm", "--inside"), "--arc");
		assertRefused(compose("--height", "20mm", "--stacked", "--arc", "70mm"), "--stacked");
		assertRefused(compose("--height", "20mm", "--underline", "2mm", "--stacked"), "--underline");
		assertRefused(compose("--height", "20mm", "--islands", "1=1"), "--islands");
		assertRefused(compose("--height", "20mm", "--bridge", "1-99"), "--bridge");
		assertRefused(compose("--height", "20mm", "--centreline", "--hatch", "1mm"), "--hatch");
		assertRefused(compose("--fit", "100mm"), "100x40mm");
		assertRefused(compose("--fit", "0x40mm"), "above zero");
		assertRefused(compose("--height", "20mm", "--arc", "-5mm"), "above zero");
		assertRefused(compose("--height", "20mm", "--embolden", "0mm"), "--embolden");
	}

	@Test
	void everyOptionIsInTheHelp() {
		String help = frisket("compose", "--help").out();
		for (String option : List.of("--features", "--axis", "--tracking", "--word-space", "--line-space", "--align",
				"--measure", "--stacked", "--arc", "--inside", "--fit", "--tie", "--underline", "--stencil", "--centreline",
				"--hatch", "--embolden", "--bridge", "--islands")) {
			assertTrue(help.contains(option), option);
		}
		assertTrue(frisket("fonts", "--help").out().contains("--stock"));
		assertTrue(frisket("glyphs", "--help").out().contains("--find"));
	}

	private static Answer fonts(String... more) {
		List<String> arguments = new ArrayList<>(List.of("fonts", "--for", "tiding ship", "--height", "12mm", "--font",
				"Liberation Serif", "--font", "DejaVu Sans Bold"));
		arguments.addAll(Arrays.asList(more));
		return frisket(arguments.toArray(String[]::new));
	}

	@Test
	void fontsAreRankedForMachines() {
		Answer answer = fonts("--json");
		assertEquals(0, answer.status(), answer.toString());
		var ranked = JsonParser.parseString(answer.out()).getAsJsonObject().getAsJsonArray("fonts");
		assertEquals(List.of("DejaVu Sans Bold", "Liberation Serif"),
				ranked.asList().stream().map(font -> font.getAsJsonObject().get("name").getAsString()).toList());
		for (JsonElement each : ranked) {
			JsonObject font = each.getAsJsonObject();
			assertEquals(Set.of("name", "file", "thinnestStroke", "narrowestGap", "smallestCounter", "pieces",
					"smallestHeight"), font.keySet());
			assertEquals(13, font.get("pieces").getAsInt(), "ten letters, three of them with dots");
			assertEquals(12 / font.get("thinnestStroke").getAsDouble(), font.get("smallestHeight").getAsDouble(), 1e-3,
					"a stroke of 1 mm decides");
			assertTrue(font.get("file").getAsString().endsWith(".ttf"));
		}
		assertEquals(answer.out(), fonts("--json").out());
	}

	@Test
	void fontsAreRankedForPeople() {
		List<String> lines = fonts().out().lines().toList();
		assertTrue(lines.get(0).startsWith("font ") && lines.get(0).contains("counter"), lines.get(0));
		assertTrue(lines.get(1).matches("DejaVu Sans Bold +yes .*"), lines.get(1));
		assertTrue(lines.get(2).matches("Liberation Serif +no .*"), lines.get(2));
		assertTrue(fonts("--thinnest", "0.3mm", "--smallest", "1mm").out().lines().toList().get(2).contains(" yes "));
	}

	@Test
	void missingCountersAreNull() {
		Answer answer = frisket("fonts", "--for", "I", "--height", "12mm", "--font", "Liberation Sans", "--json");
		JsonObject font = JsonParser.parseString(answer.out()).getAsJsonObject().getAsJsonArray("fonts").get(0)
				.getAsJsonObject();
		assertTrue(font.get("smallestCounter").isJsonNull());
		assertTrue(font.get("narrowestGap").isJsonNull());
	}

	@Test
	void fontsThatCannotBeJudgedAreRefused() throws Exception {
		assertRefused(fonts("--font", "Harbour Lane Grotesk"), "Harbour Lane Grotesk");
		assertRefused(fonts("--font", folder.resolve("none.ttf").toString()), "none.ttf");
		assertRefused(fonts("--stock", "velvet"), "velvet", "card");
		assertRefused(frisket("fonts", "--for", " ", "--height", "12mm"), "--for");
		assertRefused(frisket("fonts", "--for", "\uA66E", "--height", "12mm", "--font", "Liberation Mono"),
				"Liberation Mono has no glyph");
	}

	@Test
	void chartShowsGlyphsInCells() throws Exception {
		Path file = folder.resolve("chart.png");
		Answer answer = frisket("glyphs", "--font", "Liberation Sans", "--find", "U+2588", "--out", file.toString());
		assertEquals(0, answer.status(), answer.toString());
		BufferedImage chart = ImageIO.read(file.toFile());
		double perMm = ChartPages.DPI / 25.4;
		Point first = new ChartLayout(Paper.A4).cell(0).centre();
		Point second = new ChartLayout(Paper.A4).cell(1).centre();
		assertTrue(chart.getRGB((int) (first.x() * perMm), (int) (first.y() * perMm)) == 0xFF000000,
				"a full block is black in its middle");
		assertTrue(chart.getRGB((int) (second.x() * perMm), (int) (second.y() * perMm)) == 0xFFFFFFFF,
				"the next cell is empty");
		byte[] bytes = Files.readAllBytes(file);
		frisket("glyphs", "--font", "Liberation Sans", "--find", "U+2588", "--out", file.toString());
		assertArrayEquals(bytes, Files.readAllBytes(file));
	}

	@Test
	void largeChartsHaveSeveralPages() throws Exception {
		assertEquals(0, frisket("glyphs", "--font", "Liberation Sans", "--find", "greek", "--out",
				folder.resolve("chart.png").toString()).status());
		try (Stream<Path> files = Files.list(folder)) {
			assertEquals(List.of("chart-1.png", "chart-2.png"),
					files.map(path -> path.getFileName().toString()).sorted().limit(2).toList());
		}
	}

	@Test
	void chartIsOnePdfThatIsTheSameEachTime() throws Exception {
		Path file = folder.resolve("chart.PDF");
		for (String paper : List.of("a4", "letter")) {
			Answer answer = frisket("glyphs", "--font", "Liberation Sans", "--find", "greek", "--paper", paper, "--out",
					file.toString());
			assertEquals(0, answer.status(), answer.toString());
			assertTrue(answer.out().contains("wrote " + file), answer.out());
			byte[] bytes = Files.readAllBytes(file);
			assertEquals("%PDF-", new String(bytes, 0, 5, StandardCharsets.US_ASCII));
			frisket("glyphs", "--font", "Liberation Sans", "--find", "greek", "--paper", paper, "--out", file.toString());
			assertArrayEquals(bytes, Files.readAllBytes(file));
		}
	}

	@Test
	void chartsThatCannotBeMadeAreRefused() throws Exception {
		String file = folder.resolve("chart.png").toString();
		assertRefused(frisket("glyphs", "--font", "Liberation Sans", "--out", folder.resolve("chart.svg").toString()),
				"chart.svg", ".png", ".pdf");
		assertRefused(frisket("glyphs", "--font", "Liberation Sans", "--paper", "foolscap", "--out", file), "--paper");
		assertRefused(frisket("glyphs", "--font", "Liberation Sans", "--date", "today", "--out", file), "--date");
		assertRefused(frisket("glyphs", "--font", "Liberation Sans", "--find", "no such glyph", "--out", file), "--find");
		assertRefused(frisket("glyphs", "--font", "Harbour Lane Grotesk", "--out", file), "Harbour Lane Grotesk");
		assertRefused(frisket("glyphs", "--font", "Liberation Sans", "--find", "U+0041", "--out",
				folder.resolve("none/chart.png").toString()), "none");
	}
}
