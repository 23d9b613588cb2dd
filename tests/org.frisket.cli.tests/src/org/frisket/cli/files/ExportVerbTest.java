package org.frisket.cli.files;

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

import org.frisket.cli.Frisket;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Sheet;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs are handed out sheet by sheet on the command line. */
class ExportVerbTest {

	@TempDir
	private Path folder;
	private Path out;

	private record Answer(int status, String out, String err) {
	}

	@BeforeEach
	void makeFolder() throws IOException {
		out = Files.createDirectory(folder.resolve("out"));
	}

	/** Of a job with so many sheets, each with one square of 10 mm on it. */
	private Answer export(int sheets, String... more) throws IOException {
		Job job = SampleJobs.outline("M0 0H10V10H0Z", OperationKind.CUT);
		job.setNumber("1041");
		String part = Jobs.elements(job).get(0).getId();
		for (int i = 0; i < sheets; i++) {
			Sheet sheet = Jobs.addSheet(job, "card-" + i, 100 + i, 50);
			sheet.setName("Tags " + i);
			sheet.setColour("#1d6f78");
			Jobs.addPlacement(sheet, part, 20, 20, 0);
		}
		Path file = folder.resolve("tags.frjob");
		JobFile.save(job, file);
		List<String> arguments = new ArrayList<>(List.of("export", file.toString(), "--studio", folder.resolve("studio").toString()));
		arguments.addAll(Arrays.asList(more));
		return frisket(arguments.toArray(String[]::new));
	}

	private static Answer frisket(String... arguments) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(arguments, new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		return new Answer(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	private List<String> files() throws IOException {
		try (Stream<Path> files = Files.list(out)) {
			return files.map(path -> path.getFileName().toString()).sorted().toList();
		}
	}

	private void assertRefused(Answer answer, String why) throws IOException {
		assertEquals(2, answer.status(), answer.toString());
		assertTrue(answer.err().contains(why) && answer.err().lines().count() == 1, answer.err());
		assertEquals(List.of(), files());
	}

	@Test
	void everySheetGoesIntoTheFolderByItsName() throws Exception {
		Answer answer = export(3, "--out", out.toString(), "--format", "svg");
		assertEquals(0, answer.status(), answer.err());
		assertEquals(List.of("1041-1-card-0.svg", "1041-2-card-1.svg", "1041-3-card-2.svg"), files());
		assertTrue(Files.readString(out.resolve("1041-3-card-2.svg")).contains("width=\"102mm\""));
		assertEquals(3, answer.out().lines().filter(line -> line.startsWith("wrote ")).count(), answer.out());
	}

	@Test
	void oneFileTakesOneSheetOrTheBench() throws Exception {
		String file = out.resolve("a.svg").toString();
		assertRefused(export(3, "--out", file), "3 sheets cannot go into one file");
		assertEquals(0, export(1, "--out", file).status());
		assertTrue(Files.readString(Path.of(file)).contains("width=\"100mm\""));
		assertEquals(0, export(3, "--out", file, "--sheet", "2").status());
		assertTrue(Files.readString(Path.of(file)).contains("width=\"101mm\""));
		assertEquals(0, export(3, "--out", file, "--bench", "--set", "margin=0mm").status());
		assertTrue(Files.readString(Path.of(file)).contains("width=\"10mm\""));
	}

	@Test
	void folderIsMadeForSheets() throws Exception {
		Path fresh = out.resolve("fresh");
		assertEquals(0, export(2, "--out", fresh.toString(), "--format", "svg").status());
		assertEquals(2, fresh.toFile().list().length);
	}

	@Test
	void whatDoesNotGoTogetherIsRefusedAndLeavesNothing() throws Exception {
		assertRefused(export(2, "--out", out.toString()), "say with --format");
		assertRefused(export(2, "--out", out.toString(), "--format", "svg", "--name", "{job}"), "{sheet}");
		assertRefused(export(2, "--out", out.toString(), "--format", "svg", "--name", "{jobs}"), "character 1");
		assertRefused(export(2, "--out", out.toString(), "--format", "svg", "--sheet", "3"), "There is no sheet 3");
		assertRefused(export(2, "--out", out.toString(), "--format", "xyz"), "there is no format “xyz”");
		assertRefused(export(2, "--out", out.resolve("no/deeper").toString(), "--format", "svg"), "cannot be made");
		assertRefused(export(2, "--out", out.resolve("no.txt").toString(), "--format", "svg"), "there is no folder");
		assertRefused(export(2, "--out", out.toString(), "--format", "svg", "--machine", "cutter"), "--machine");
		assertRefused(export(2, "--out", out.toString(), "--format", "svg", "--set", "margin=wide"), "margin");
		assertRefused(export(2, "--out", out.toString(), "--format", "svg", "--run", "no-such=1"), "no-such");
		assertRefused(export(2, "--drive", "NONE", "--format", "svg"), "there is no drive “NONE”");
		assertRefused(export(2, "--preset", "Tags"), "there is no preset “Tags”");
	}

	@Test
	void presetKeepsWhatWasSaid() throws Exception {
		Answer saved = export(2, "--out", out.toString(), "--format", "svg", "--name", "{sheet}", "--set", "fill=none",
				"--save-preset", "Tags");
		assertEquals(0, saved.status(), saved.err());
		assertEquals(List.of("1.svg", "2.svg"), files());
		Files.delete(out.resolve("1.svg"));
		assertEquals(0, export(2, "--preset", "tags").status());
		assertEquals(List.of("1.svg", "2.svg"), files());
		assertFalse(Files.readString(out.resolve("1.svg")).contains("fill=\"#1d6f78\""));
		assertEquals(0, export(2, "--preset", "Tags", "--set", "fill=layer", "--name", "layer {sheet}").status());
		assertTrue(Files.readString(out.resolve("layer 1.svg")).contains("#1d6f78"));
		Files.writeString(folder.resolve("studio/presets/bad.preset"), "nothing");
		Answer list = frisket("export", "--list", "--studio", folder.resolve("studio").toString());
		assertTrue(list.out().contains("Tags: org.frisket.export.svg") && list.out().contains("fill=none, {sheet}, into " + out),
				list.out());
		assertTrue(list.err().contains("bad.preset: line 1"), list.err());
	}

	@Test
	void helpTellsTheOptionsOfAllFormats() {
		Answer help = frisket("export", "--help");
		assertEquals(0, help.status());
		assertTrue(help.out().contains("margin=5mm: free space around the drawing (0 mm to 1000 mm)"), help.out());
		assertTrue(help.out().contains("fill=layer: areas in the colour of their layer, or lines alone (layer, none)"), help.out());
	}
}
