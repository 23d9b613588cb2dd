package org.frisket.cli.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.frisket.cli.Frisket;
import org.frisket.geometry.Contour;
import org.frisket.geometry.PathData;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** Artwork of others, cleaned on the command line. */
class CleanVerbTest {

	private static final String TAGS = """
			<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="60mm" viewBox="0 0 100 60">
			<rect x="5" y="5" width="30" height="20"/><rect x="25" y="10" width="30" height="20"/>
			<path d="M60 5h20v20h-20z M60 5h20v20h-20z"/>
			<g fill="none" stroke="#000">
			<path d="M5 40h20"/><path d="M25.01 40v10"/><path d="M25 50.005h-20"/><path d="M5 50v-10"/><path d="M10 40h10"/>
			%s
			</g></svg>
			""";

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

	private Path artwork(String name, String text) throws IOException {
		return Files.writeString(folder.resolve(name), text);
	}

	private Answer clean(Path file, String out, String... more) {
		List<String> arguments = new ArrayList<>(
				List.of("clean", file.toString(), "--out", folder.resolve(out).toString()));
		arguments.addAll(List.of(more));
		return frisket(arguments.toArray(String[]::new));
	}

	private static List<Contour> contours(Element element) {
		return PathData.parse(((Outline) element).getPathData()).contours();
	}

	private static double area(List<Contour> contours) {
		return -contours.stream().mapToDouble(Contour::signedArea).sum();
	}

	@Test
	void tagsAreUnitedAndLooseLinesClosed() throws Exception {
		Answer answer = clean(artwork("tags.svg", TAGS.formatted("")), "tags.frjob");
		assertEquals(0, answer.status(), answer.toString());
		Job job = JobFile.load(folder.resolve("tags.frjob"));
		List<Element> elements = Jobs.elements(job);
		double area = 0;
		for (Element element : elements) {
			assertEquals(OperationKind.CUT, element.getOperations().get(0).getKind());
			assertTrue(contours(element).stream().allMatch(Contour::isClosed));
			area += area(contours(element));
		}
		assertEquals(600 + 600 - 150 + 400 + 200, area, 0.3);
		for (String kind : List.of("duplicate-removed", "crossing-resolved", "ends-joined", "doubled-line-removed")) {
			assertTrue(answer.out().contains("repair " + kind + " "), answer.out());
		}
		assertTrue(answer.out().contains("wrote " + folder.resolve("tags.frjob")), answer.out());
	}

	@Test
	void openLinesAreDrawnAndNearlyClosedOnesBlock() throws Exception {
		Path file = artwork("tags.svg", TAGS.formatted("<path d='M40 40l20 10'/>"));
		Answer answer = clean(file, "tags.frjob");
		assertEquals(0, answer.status(), answer.toString());
		assertTrue(answer.out().contains("note line-open"), answer.out());
		List<Element> drawn = Jobs.elements(JobFile.load(folder.resolve("tags.frjob"))).stream()
				.filter(element -> element.getOperations().get(0).getKind() == OperationKind.DRAW).toList();
		assertEquals(1, drawn.size());
		assertEquals(1, contours(drawn.get(0)).size());
		Path gap = artwork("gap.svg", TAGS.formatted("<path d='M60 40h10v10h-10v-9.6'/>"));
		Answer open = clean(gap, "gap.frjob");
		assertEquals(1, open.status(), open.toString());
		assertTrue(open.out().contains("blocking contour-open"), open.out());
		assertEquals(0, clean(gap, "gap.frjob", "--pen").status());
		assertEquals(0, clean(gap, "gap.frjob", "--set", "reach=0.5mm").status());
		Answer bridged = clean(gap, "gap.frjob", "--set", "reach=0.5mm", "--json");
		assertTrue(bridged.out().contains("\"withinTolerance\": true"), bridged.out());
		assertTrue(bridged.out().contains("\"length\": 0.39"), bridged.out());
	}

	@Test
	void reportForMachines() throws Exception {
		Path file = artwork("tags.svg", TAGS.formatted("<path d='M40 40l20 10'/>"));
		Answer answer = clean(file, "tags.svg.svg", "--json");
		JsonObject report = JsonParser.parseString(answer.out()).getAsJsonObject();
		assertEquals(Set.of("input", "output", "layers", "repairs", "remarks"), report.keySet());
		assertEquals(file.toString(), report.get("input").getAsString());
		JsonObject repair = report.getAsJsonArray("repairs").get(0).getAsJsonObject();
		assertEquals(Set.of("layer", "kind", "x", "y", "amount", "unit"), repair.keySet());
		assertEquals(1, report.getAsJsonArray("layers").asList().stream()
				.mapToInt(layer -> layer.getAsJsonObject().getAsJsonArray("open").size()).sum());
		JsonObject movement = report.getAsJsonArray("layers").get(0).getAsJsonObject().getAsJsonObject("movement");
		assertEquals(Set.of("result", "source", "exactTo", "withinTolerance", "taken", "brought"), movement.keySet());
		assertTrue(movement.get("withinTolerance").getAsBoolean(), movement.toString());
		assertTrue(movement.getAsJsonObject("source").get("mm").getAsDouble() > 0, "the loose lines were moved");
		// the two rectangles that cross have lost 15 and 10 mm of their sides each
		assertEquals(50, movement.getAsJsonArray("taken").asList().stream()
				.mapToDouble(taken -> taken.getAsJsonObject().get("length").getAsDouble()).sum(), 1);
		assertEquals(0, movement.getAsJsonArray("brought").size());
		assertEquals(answer.out(), clean(file, "tags.svg.svg", "--json").out());
	}

	@Test
	void whatIsCleanComesOutAsItWentIn() throws Exception {
		Path file = artwork("tags.svg", TAGS.formatted(""));
		assertEquals(0, clean(file, "once.svg").status());
		Answer again = clean(folder.resolve("once.svg"), "twice.svg");
		assertEquals(0, again.status(), again.toString());
		assertFalse(again.out().contains("repair "), again.out());
		byte[] once = Files.readAllBytes(folder.resolve("once.svg"));
		clean(file, "once.svg");
		assertArrayEquals(once, Files.readAllBytes(folder.resolve("once.svg")));
		assertEquals(0, clean(file, "tags.png").status());
	}

	@Test
	void plotsAndDrawingsAreReadToo() throws Exception {
		Answer plot = clean(artwork("tag.plt", "IN;SP1;PU0,0;PD400,0;PD400,400;PD0,400;PD0,0;PU;SP0;"), "plot.frjob");
		assertEquals(0, plot.status(), plot.toString());
		assertEquals(100, area(contours(Jobs.elements(JobFile.load(folder.resolve("plot.frjob"))).get(0))), 0.1);
	}

	@Test
	void wrongUseIsRefusedAndNothingIsWritten() throws Exception {
		Path file = artwork("tags.svg", TAGS.formatted(""));
		assertRefused(clean(folder.resolve("none.svg"), "x.svg"), "none.svg");
		assertRefused(clean(artwork("torn.svg", "<svg xmlns='http://www.w3.org/2000/svg'><rect"), "x.svg"), "torn.svg");
		assertRefused(clean(artwork("tags.txt", "tags"), "x.svg"), "tags.txt", ".svg");
		assertRefused(clean(file, "x.tiff"), "x.tiff");
		assertRefused(clean(file, "x.svg", "--tolerance", "0mm"), "--tolerance");
		assertRefused(clean(file, "x.svg", "--set", "reach=far"), "reach", "far");
		assertRefused(clean(file, "x.svg", "--set", "polish=yes"), "polish", "reach");
		assertRefused(frisket("clean", file.toString()), "--out");
		assertTrue(frisket("clean", "--list").out().contains("reach=0mm"));
	}

	private void assertRefused(Answer answer, String... words) {
		assertEquals(2, answer.status(), answer.toString());
		assertEquals("", answer.out());
		assertEquals(1, answer.err().lines().count(), answer.err());
		for (String word : words) {
			assertTrue(answer.err().contains(word), answer.err());
		}
		assertFalse(answer.err().contains("mistake of the program"), answer.err());
		assertFalse(Files.exists(folder.resolve("x.svg")) || Files.exists(folder.resolve("x.tiff")));
	}
}
