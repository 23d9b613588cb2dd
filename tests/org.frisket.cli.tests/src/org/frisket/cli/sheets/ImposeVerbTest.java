package org.frisket.cli.sheets;

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

import org.frisket.cli.Frisket;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** Gift tags on sheets and on a roll, from the command line. */
class ImposeVerbTest {

	private static final String TAGS = """
			<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="200mm" viewBox="0 0 200 200">
			<path id="tag" data-quantity="6" d="M0 20C0 0 40 0 40 20C40 40 0 40 0 20Z"/>
			<path id="pennant" data-quantity="4" d="M100 0L140 10L105 50Z"/>
			<rect id="card" x="0" y="100" width="60" height="40"/>
			</svg>
			""";

	@TempDir
	private Path folder;

	private record Answer(int status, String out, String err) {
	}

	private Answer impose(String art, String... more) throws IOException {
		List<String> arguments = new ArrayList<>(
				List.of("impose", Files.writeString(folder.resolve("parts.svg"), art).toString()));
		arguments.addAll(List.of(more));
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(arguments.toArray(String[]::new), new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		return new Answer(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	private List<Contour> placed(Path job) throws IOException {
		return Jobs.elements(JobFile.load(job)).stream().map(Outline.class::cast)
				.flatMap(element -> PathData.parse(element.getPathData()).contours().stream()).toList();
	}

	@Test
	void everyPathOnASheetAsOftenAsItIsWanted() throws IOException {
		Path layout = folder.resolve("layout.frjob");
		Answer answer = impose(TAGS, "--sheet", "12x12in", "--turn", "90", "--steps", "200000", "--out", layout.toString(),
				"--json");
		assertEquals(0, answer.status(), answer.err());
		JsonObject json = JsonParser.parseString(answer.out()).getAsJsonObject();
		assertEquals(11, json.get("parts").getAsInt());
		assertEquals(1, json.get("sheets").getAsInt());
		List<Contour> placed = placed(layout);
		assertEquals(11, placed.size());
		for (Contour contour : placed) {
			Bounds bounds = contour.bounds();
			assertTrue(bounds.minX() >= 5 - 2e-3 && bounds.minY() >= 5 - 2e-3 && bounds.maxX() <= 299.8 + 2e-3
					&& bounds.maxY() <= 299.8 + 2e-3, () -> "in the margin: " + bounds);
		}
		assertApart(placed, 2);
		double area = -placed.stream().mapToDouble(Contour::signedArea).sum();
		assertEquals(area / (304.8 * json.get("length").getAsDouble()), json.get("utilisation").getAsDouble(), 1e-6);
	}

	/** Places 0.25 mm apart on both contours. */
	private static void assertApart(List<Contour> contours, double gap) {
		List<List<Point>> places = contours.stream().map(ImposeVerbTest::along).toList();
		for (int i = 0; i < places.size(); i++) {
			for (int j = 0; j < i; j++) {
				for (Point p : places.get(i)) {
					for (Point q : places.get(j)) {
						double d = Math.hypot(p.x() - q.x(), p.y() - q.y());
						assertTrue(d >= gap - 2e-3, () -> "only " + d + " mm apart");
					}
				}
			}
		}
	}

	private static List<Point> along(Contour contour) {
		List<Point> corners = contour.flattened(0.001);
		List<Point> places = new ArrayList<>();
		for (int i = 0; i < corners.size(); i++) {
			Point a = corners.get(i);
			Point b = corners.get((i + 1) % corners.size());
			int steps = (int) Math.ceil(Math.hypot(b.x() - a.x(), b.y() - a.y()) / 0.25);
			for (int k = 0; k < steps; k++) {
				double t = k / (double) steps;
				places.add(new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y())));
			}
		}
		return places;
	}

	@Test
	void sameStepsSameBytes() throws IOException {
		for (String name : List.of("one.svg", "two.svg")) {
			Answer answer = impose(TAGS, "--roll", "150mm", "--turn", "180", "--steps", "150000", "--seed", "7", "--out",
					folder.resolve(name).toString());
			assertEquals(0, answer.status(), answer.err());
			assertTrue(answer.out().contains("11 parts on") && answer.out().contains("mm of the roll"), answer.out());
		}
		assertArrayEquals(Files.readAllBytes(folder.resolve("one.svg")), Files.readAllBytes(folder.resolve("two.svg")));
	}

	@Test
	void whatFindsNoPlaceIsTold() throws IOException {
		Answer answer = impose(TAGS, "--sheet", "80x60mm", "--sheets", "2", "--steps", "20000", "--json");
		assertEquals(1, answer.status());
		JsonObject json = JsonParser.parseString(answer.out()).getAsJsonObject();
		assertEquals(2, json.get("sheets").getAsInt());
		int left = 0;
		for (var one : json.getAsJsonArray("left")) {
			left += one.getAsJsonObject().get("quantity").getAsInt();
		}
		assertEquals(11 - json.get("parts").getAsInt(), left);
		Answer large = impose(TAGS, "--sheet", "50x50mm", "--steps", "20000");
		assertTrue(large.out().contains("no place for 1 of “card”, 60.00 × 40.00 mm"), large.out());
	}

	@Test
	void openLinesAreNoParts() throws IOException {
		Answer answer = impose("""
				<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">
				<path id="fold" fill="none" stroke="#000" d="M0 0L50 50"/>
				<path id="label" fill="none" stroke="#000" d="M0 0h30v20h-30z"/>
				</svg>""", "--sheet", "100x100mm", "--steps", "1000");
		assertEquals(0, answer.status(), answer.err());
		assertTrue(answer.err().contains("“fold”"), answer.err());
		assertTrue(answer.out().startsWith("1 part on 1 sheet,"), answer.out());
		Answer none = impose("""
				<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">
				<path fill="none" stroke="#000" d="M0 0L50 50"/></svg>""", "--sheet", "100x100mm");
		assertEquals(2, none.status());
		assertTrue(none.err().contains("parts.svg: there is no closed outline"), none.err());
	}

	@Test
	void wrongUseWritesNothing() throws IOException {
		Path out = folder.resolve("never.svg");
		for (String[] wrong : new String[][] { {}, { "--sheet", "12x12in", "--roll", "580mm" },
				{ "--sheet", "100x100mm", "--margin", "50mm" }, { "--sheet", "100x100mm", "--gap", "-1mm" },
				{ "--sheet", "0x100mm" }, { "--roll", "580mm", "--turn", "45" }, { "--roll", "580mm", "--seconds", "-3" } }) {
			List<String> arguments = new ArrayList<>(List.of(wrong));
			arguments.addAll(List.of("--out", out.toString()));
			Answer answer = impose(TAGS, arguments.toArray(String[]::new));
			assertEquals(2, answer.status(), () -> String.join(" ", wrong));
			assertFalse(answer.err().isBlank());
			assertFalse(Files.exists(out));
		}
	}

	@Test
	void sheetsMayBeNamed() throws IOException {
		Answer named = impose(TAGS, "--sheet", "a4", "--steps", "1000", "--json");
		Answer sides = impose(TAGS, "--sheet", "210x297mm", "--steps", "1000", "--json");
		assertEquals(0, named.status(), named.err());
		assertEquals(JsonParser.parseString(sides.out()).getAsJsonObject().get("length"),
				JsonParser.parseString(named.out()).getAsJsonObject().get("length"));
		assertEquals(2, impose(TAGS, "--sheet", "A99").status());
	}
}
