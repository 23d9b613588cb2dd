package org.frisket.cli;

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
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.frisket.model.CornerJoin;
import org.frisket.model.FrameKind;
import org.frisket.model.HoleRule;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.MatForm;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.prepare.fonts.FontLibraries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class FrisketTest {

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

	private Answer compose(String file, String... more) {
		List<String> arguments = new ArrayList<>(List.of("compose", "--text", "Harbour Lane", "--font",
				"Liberation Serif", "--height", "40mm", "--out", folder.resolve(file).toString()));
		arguments.addAll(Arrays.asList(more));
		return frisket(arguments.toArray(String[]::new));
	}

	private List<String> files() throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.map(path -> path.getFileName().toString()).sorted().toList();
		}
	}

	private void assertRefused(Answer answer, String... words) throws IOException {
		assertEquals(2, answer.status(), answer.toString());
		assertEquals("", answer.out());
		assertEquals(1, answer.err().lines().count(), answer.err());
		for (String word : words) {
			assertTrue(answer.err().contains(word), answer.err());
		}
		assertFalse(answer.err().contains("mistake of the program"), answer.err());
		assertEquals(List.of(), files());
	}

	@Test
	void composeWritesTheJobWithItsDecisions() throws Exception {
		Answer answer = compose("x.frjob", "--touch", "0.3mm", "--mat", "3mm,6mm");
		assertEquals(0, answer.status(), answer.toString());
		Job job = JobFile.load(folder.resolve("x.frjob"));
		assertEquals(3, job.getLayers().size());
		Wording wording = (Wording) job.getLayers().get(2).getElements().get(0);
		assertEquals("Harbour Lane", wording.getText());
		assertEquals(40, wording.getHeight());
		assertTrue(wording.isJoined());
		assertEquals(0.3, wording.getTouch());
		assertEquals("Liberation Serif", wording.getFont().getName());
		assertEquals(64, wording.getFont().getDigest().length());
		Mat mat = (Mat) job.getLayers().get(0).getElements().get(0);
		assertEquals(6, mat.getDistance());
		assertEquals(List.of(wording), mat.getBehind());
	}

	@Test
	void composeWritesSeveralFilesAtOnce() throws Exception {
		assertEquals(0, compose("x.svg", "--out", folder.resolve("x.png").toString()).status());
		assertEquals(List.of("x.png", "x.svg"), files());
		assertTrue(Files.readString(folder.resolve("x.svg")).contains("data-operation=\"cut\""));
	}

	@Test
	void composeWritesWhatMachinesRead() throws Exception {
		assertEquals(0, compose("x.dxf", "--out", folder.resolve("x.plt").toString(), "--out",
				folder.resolve("x.ngc").toString()).status());
		assertTrue(Files.readString(folder.resolve("x.dxf")).contains("AC1009"));
		assertTrue(Files.readString(folder.resolve("x.plt")).startsWith("IN;"));
		assertTrue(Files.readString(folder.resolve("x.ngc")).endsWith("M2\n"));
	}

	@Test
	void composeIsDeterministic() throws Exception {
		compose("a.svg", "--touch", "0.3mm", "--mat", "3mm,6mm");
		compose("b.svg", "--touch", "0.3mm", "--mat", "3mm,6mm");
		assertArrayEquals(Files.readAllBytes(folder.resolve("a.svg")), Files.readAllBytes(folder.resolve("b.svg")));
	}

	@Test
	void jobAndDrawingOfOneCompositionAgree() throws Exception {
		compose("x.frjob", "--mat", "3mm");
		compose("direct.svg", "--mat", "3mm");
		Answer answer = frisket("export", folder.resolve("x.frjob").toString(), "--out",
				folder.resolve("later.svg").toString());
		assertEquals(0, answer.status(), answer.toString());
		assertArrayEquals(Files.readAllBytes(folder.resolve("direct.svg")),
				Files.readAllBytes(folder.resolve("later.svg")));
	}

	@Test
	void inchesAndPointsAreLengthsToo() throws Exception {
		assertEquals(0, frisket("compose", "--text", "H", "--font", "DejaVu Sans", "--height", "1in", "--out",
				folder.resolve("x.frjob").toString()).status());
		Wording wording = (Wording) Jobs.elements(JobFile.load(folder.resolve("x.frjob"))).get(0);
		assertEquals(25.4, wording.getHeight(), 1e-12);
	}

	@Test
	void backslashNBeginsALine() throws Exception {
		assertEquals(0, frisket("compose", "--text", "Harbour\\nLane", "--font", "DejaVu Sans", "--height", "40mm",
				"--align", "centre", "--out", folder.resolve("x.frjob").toString()).status());
		Wording wording = (Wording) Jobs.elements(JobFile.load(folder.resolve("x.frjob"))).get(0);
		assertEquals("Harbour\nLane", wording.getText());
	}

	@Test
	void matsHaveTheShapeThatIsAskedFor() throws Exception {
		assertEquals(0, compose("x.frjob", "--mat", "2mm", "--mat-form", "frame", "--frame", "ellipse", "--frame-margin",
				"4mm", "--frame-width", "3mm", "--mat-radius", "1mm").status());
		Mat mat = (Mat) JobFile.load(folder.resolve("x.frjob")).getLayers().get(0).getElements().get(0);
		assertEquals(MatForm.FRAME, mat.getForm());
		assertEquals(FrameKind.ELLIPSE, mat.getFrameKind());
		assertEquals(List.of(4.0, 3.0, 1.0), List.of(mat.getFrameMargin(), mat.getFrameWidth(), mat.getCornerRadius()));
		assertEquals(0, compose("x.svg", "--mat", "2mm", "--mat-form", "hollow-hull", "--hull-reach", "8mm").status());
		assertEquals(0, compose("y.svg", "--mat", "2mm", "--mat-form", "hull", "--holes", "fillSmall", "--smallest-hole",
				"2mm").status());
		assertEquals(0, compose("y.frjob", "--mat", "2mm", "--mat-form", "shadow", "--shadow", "4mm,-2mm").status());
		mat = (Mat) JobFile.load(folder.resolve("y.frjob")).getLayers().get(0).getElements().get(0);
		assertEquals(List.of(4.0, -2.0), List.of(mat.getShadowX(), mat.getShadowY()));
	}

	@Test
	void shapesThatThereAreNotAreRefused() throws Exception {
		assertRefused(compose("x.svg", "--mat", "3mm", "--mat-form", "cloud"), "--mat-form", "hollow-hull");
		assertRefused(compose("x.svg", "--mat", "3mm", "--shadow", "3mm"), "--shadow");
		assertRefused(compose("x.svg", "--mat", "3mm", "--frame", "heart"), "--frame", "ellipse");
	}

	@Test
	void cornersAndHolesOfMatsAreChosen() throws Exception {
		assertEquals(0, compose("x.frjob", "--mat", "3mm", "--corners", "mitre", "--holes", "fill").status());
		Mat mat = (Mat) JobFile.load(folder.resolve("x.frjob")).getLayers().get(0).getElements().get(0);
		assertEquals(CornerJoin.MITRE, mat.getCorners());
		assertEquals(HoleRule.FILL, mat.getHoles());
		Files.delete(folder.resolve("x.frjob"));
		assertRefused(compose("x.svg", "--mat", "3mm", "--corners", "wavy"), "--corners", "round, mitre, bevel");
	}

	@Test
	void drawnWordingIsOnlyDrawn() throws Exception {
		compose("x.frjob", "--draw", "--mat", "3mm");
		Jobs.elements(JobFile.load(folder.resolve("x.frjob"))).forEach(element -> assertEquals(
				List.of(OperationKind.DRAW), element.getOperations().stream().map(o -> o.getKind()).toList()));
	}

	@Test
	void blockingFindingsAreStatusOneAndTheFileIsWritten() throws Exception {
		Answer answer = frisket("compose", "--text", "A\uA66E", "--font", "DejaVu Sans Mono", "--height", "40mm",
				"--out", folder.resolve("x.svg").toString());
		assertEquals(1, answer.status(), answer.toString());
		assertTrue(answer.out().contains("blocking glyph-missing"), answer.out());
		assertEquals(List.of("x.svg"), files());
	}

	@Test
	void lengthsThatAreNoneAreRefused() throws Exception {
		for (String height : List.of("40", "0mm", "-3mm", "tall", "NaNmm", "1e400mm", "40 furlongs", "")) {
			assertRefused(frisket("compose", "--text", "H", "--font", "DejaVu Sans", "--height", height, "--out",
					folder.resolve("x.svg").toString()), "--height");
		}
		assertRefused(compose("x.svg", "--touch", "0.3"), "--touch", "unit");
		assertRefused(compose("x.svg", "--mat", "3mm,6"), "--mat", "“6”");
		assertRefused(compose("x.svg", "--mat", "0mm"), "--mat");
		assertRefused(compose("x.svg", "--tolerance", "0mm"), "--tolerance");
	}

	@Test
	void fontsThatAreNoneAreRefused() throws Exception {
		Path broken = Files.write(Files.createTempFile("frisket", ".ttf"), new byte[1000]);
		try {
			for (String font : List.of("/no/such/font.ttf", "Harbour Lane Grotesk", broken.toString(), "/")) {
				assertRefused(frisket("compose", "--text", "H", "--font", font, "--height", "40mm", "--out",
						folder.resolve("x.svg").toString()), font);
			}
		} finally {
			Files.delete(broken);
		}
	}

	@Test
	void textWithoutAnyGlyphIsRefused() throws Exception {
		for (String text : List.of("", "  ", "\uA66E\uA66E", "\\n")) {
			assertRefused(frisket("compose", "--text", text, "--font", "Liberation Serif", "--height", "40mm", "--out",
					folder.resolve("x.svg").toString()), "--text");
		}
	}

	@Test
	void placesThatCannotBeWrittenAreRefused() throws Exception {
		assertRefused(compose("no/such/folder/x.svg"), "no/such/folder");
		assertRefused(compose("no/such/folder/x.frjob"), "no/such/folder");
		assertRefused(compose("x.xyz"), ".svg", ".frjob");
		assertRefused(compose("x"), "--out");
	}

	@Test
	void wrongUseIsOneLineWithAPointerToTheHelp() throws Exception {
		assertRefused(compose("x.svg", "--hight", "3mm"), "--hight", "frisket compose --help");
		assertRefused(frisket("compose", "--text", "H"), "--font", "--help");
		assertRefused(frisket("decompose"), "decompose", "--help");
		assertRefused(frisket(), "compose");
		assertRefused(compose("x.svg", "--align", "diagonal"), "diagonal");
	}

	@Test
	void helpOfEveryVerbIsShown() {
		assertTrue(frisket("--help").out().contains("compose"));
		for (String verb : List.of("compose", "inspect", "export")) {
			Answer answer = frisket(verb, "--help");
			assertEquals(0, answer.status());
			assertTrue(answer.out().contains("--help"), answer.out());
		}
	}

	@Test
	void inspectListsFindingsOneALineAndAsJson() throws Exception {
		frisket("compose", "--text", "tiding", "--font", "Liberation Serif", "--height", "30mm", "--touch", "0.3mm",
				"--out", folder.resolve("x.frjob").toString());
		Answer lines = frisket("inspect", folder.resolve("x.frjob").toString());
		assertEquals(0, lines.status());
		assertEquals(2, lines.out().lines().filter(line -> line.startsWith("caution loose-piece")).count(), lines.out());
		Answer json = frisket("inspect", folder.resolve("x.frjob").toString(), "--json", "--thinnest", "3mm");
		JsonObject root = JsonParser.parseString(json.out()).getAsJsonObject();
		JsonObject thin = root.getAsJsonArray("findings").asList().stream().map(f -> f.getAsJsonObject())
				.filter(f -> f.get("id").getAsString().equals("stroke-too-thin")).findFirst().orElseThrow();
		assertTrue(thin.get("measured").getAsDouble() < 3, thin.toString());
		assertEquals(3, thin.get("limit").getAsDouble());
	}

	/** Kinds of findings that no test of the checks themselves has to be trusted for: through a file and the command line. */
	@Test
	void inspectChecksEachLayerByItsStockAndTheStudiosOwnLimits() throws Exception {
		Job job = Jobs.create("tags", "Gift tags");
		Layer card = Jobs.addLayer(job, "Tags");
		card.setStock("heavy-card");
		Jobs.addOperation(Jobs.addOutline(card, "M0 0V1.3H40V0Z"), OperationKind.CUT);
		Layer film = Jobs.addLayer(job, "Film");
		film.setStock("film");
		Jobs.addOperation(Jobs.addOutline(film, "M0 10V11.3H40V10Z"), OperationKind.CUT);
		Jobs.addOperation(Jobs.addOutline(film, "M0 11.3V20H40V11.3Z"), OperationKind.CUT);
		String file = folder.resolve("tags.frjob").toString();
		JobFile.save(job, Path.of(file));
		Path studio = folder.resolve("studio");
		Answer first = frisket("inspect", file, "--studio", studio.toString());
		assertEquals(List.of("caution cut-twice e3", "caution stroke-too-thin e1"),
				first.out().lines().map(line -> line.replaceAll(" at .*", "")).sorted().toList(), first.out());
		assertTrue(first.out().contains("limit 1.500 mm"), first.out());
		Files.writeString(studio.resolve("limits.properties"), "heavy-card.thinnest-stroke = 1.2mm\nfilm.gap = 1mm\n");
		Answer second = frisket("inspect", file, "--studio", studio.toString());
		assertFalse(second.out().contains("stroke-too-thin"), second.out());
		assertTrue(second.out().contains("limits.properties, line 2"), second.out());
		Answer asPaper = frisket("inspect", file, "--studio", studio.toString(), "--stock", "paper", "--thinnest", "1.4mm");
		assertEquals(2, asPaper.out().lines().filter(line -> line.contains("stroke-too-thin")).count(), asPaper.out());
	}

	@Test
	void inspectListsMeasuresOfEachElement() throws Exception {
		Job job = Jobs.create("plate", "Plate");
		Layer layer = Jobs.addLayer(job, "Plate");
		Jobs.addOperation(Jobs.addOutline(layer, "M0 0V20H30V0Z M5 5H15V15H5Z"), OperationKind.CUT);
		String file = folder.resolve("plate.frjob").toString();
		JobFile.save(job, Path.of(file));
		Answer lines = frisket("inspect", file, "--measures");
		assertTrue(lines.out().contains("measures e1: area 500.00 mm², length 140.00 mm, box 30.00 × 20.00 mm at 0.00,0.00"),
				lines.out());
		JsonObject measures = JsonParser.parseString(frisket("inspect", file, "--measures", "--json").out()).getAsJsonObject()
				.getAsJsonArray("measures").get(0).getAsJsonObject();
		assertEquals(500, measures.get("area").getAsDouble(), 1e-9);
		assertEquals(1, measures.get("holes").getAsInt());
		assertEquals(8, measures.get("nodes").getAsInt());
		assertEquals(5, measures.getAsJsonObject("thinnest").get("value").getAsDouble(), 0.05);
		// the plate's 600 mm² about 15, less the hole's 100 about 10
		assertEquals(16, measures.getAsJsonObject("centre").get("x").getAsDouble(), 1e-9);
		assertFalse(JsonParser.parseString(frisket("inspect", file, "--json").out()).getAsJsonObject().has("measures"));
	}

	@Test
	void jobsThatCannotBeReadAreRefusedWithTheirPlace() throws Exception {
		compose("x.frjob");
		byte[] whole = Files.readAllBytes(folder.resolve("x.frjob"));
		Files.delete(folder.resolve("x.frjob"));
		Path cut = Files.write(Files.createTempFile("frisket", ".frjob"), Arrays.copyOf(whole, whole.length / 2));
		try {
			assertRefused(frisket("inspect", cut.toString()), cut.toString(), "line");
			assertRefused(frisket("export", cut.toString(), "--out", folder.resolve("x.svg").toString()),
					cut.toString());
			assertRefused(frisket("inspect", folder.resolve("gone.frjob").toString()), "gone.frjob");
		} finally {
			Files.delete(cut);
		}
	}

	@Test
	void formatsAreListedWithTheirOptions() {
		Answer answer = frisket("export", "--list");
		assertEquals(0, answer.status());
		assertTrue(answer.out().contains(".svg SVG drawing (org.frisket.export.svg)"), answer.out());
		assertTrue(answer.out().contains("margin=5mm"), answer.out());
	}

	@Test
	void exportOptionsAreChecked() throws Exception {
		Path job = Files.createTempFile("frisket", ".frjob");
		Files.delete(job);
		frisket("compose", "--text", "H", "--font", "DejaVu Sans", "--height", "40mm", "--out", job.toString());
		try {
			assertRefused(frisket("export", job.toString(), "--out", folder.resolve("x.svg").toString(), "--set",
					"margin=5"), "margin", "write it like 40mm");
			assertRefused(frisket("export", job.toString(), "--out", folder.resolve("x.svg").toString(), "--set",
					"colour=red"), "colour");
		} finally {
			Files.delete(job);
		}
	}

	/** The files below a folder by their names. */
	private static List<String> files(Path folder) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			return files.filter(Files::isRegularFile).map(path -> path.getFileName().toString()).sorted().toList();
		}
	}

	@Test
	void fontInTheStudioFolderIsAtHandAndKeptWithTheJob() throws Exception {
		String studio = folder.resolve("studio").toString();
		assertEquals(0, frisket("export", "--list", "--studio", studio).status(), "makes the folder");
		byte[] font = FontLibraries.installed().find("Liberation Serif").bytes();
		Path file = folder.resolve("studio/fonts/ferry.ttf");
		// a content that no other source has
		Files.write(file, Arrays.copyOf(font, font.length + 4));
		assertEquals(0, compose("order.frjob", "--studio", studio, "--out", folder.resolve("order.svg").toString()).status());
		assertEquals(2, files(folder.resolve("studio")).stream().filter(name -> name.endsWith("ttf")
				|| name.matches("[0-9a-f]{64}\\.font")).count(), files(folder.resolve("studio")).toString());
		Files.write(file, FontLibraries.installed().find("Liberation Mono").bytes());
		Answer answer = frisket("export", folder.resolve("order.frjob").toString(), "--studio", studio, "--out",
				folder.resolve("reorder.svg").toString());
		assertEquals(0, answer.status(), answer.toString());
		assertArrayEquals(Files.readAllBytes(folder.resolve("order.svg")),
				Files.readAllBytes(folder.resolve("reorder.svg")));
		assertEquals(0, frisket("inspect", folder.resolve("order.frjob").toString(), "--studio", studio).status());
		assertTrue(frisket("fonts", "--for", "Quay", "--height", "30mm", "--font", "Liberation Mono", "--studio", studio)
				.out().contains("Liberation Mono"));
	}

	@Test
	void studioThatIsNoFolderIsRefused() throws Exception {
		Path letter = Files.writeString(folder.resolve("letter"), "Dear customer");
		for (String[] verb : List.of(new String[] { "compose", "--text", "A", "--font", "Liberation Serif", "--height", "9mm",
				"--out", folder.resolve("x.svg").toString() }, new String[] { "fonts", "--for", "A", "--height", "9mm" },
				new String[] { "glyphs", "--font", "Liberation Serif", "--out", folder.resolve("x.png").toString() },
				new String[] { "inspect", folder.resolve("x.frjob").toString() }, new String[] { "export", "--list" })) {
			List<String> arguments = new ArrayList<>(List.of(verb));
			arguments.addAll(List.of("--studio", letter.toString()));
			Answer answer = frisket(arguments.toArray(String[]::new));
			assertEquals(2, answer.status(), answer.toString());
			assertTrue(answer.err().contains("--studio: The studio folder “" + letter + "” cannot be used: it is no folder"),
					answer.err());
			assertEquals(List.of("letter"), files());
		}
	}
}
