package org.frisket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Callers of the command line are programs as often as people: what cannot be done exits with 2, says in one line what
 * is wrong with what, and leaves every place as it was.
 */
class WrongUseTest {

	private static final String LEAF = "<svg xmlns='http://www.w3.org/2000/svg' width='80mm' height='60mm' viewBox='0 0 80 60'>"
			+ "<path d='M5 30C20 5 55 5 75 30C55 55 20 55 5 30Z'/></svg>";
	private static final String BARE = "<svg xmlns='http://www.w3.org/2000/svg' width='80mm' height='60mm'/>";

	@TempDir
	private Path folder;

	private record Answer(int status, String out, String err) {
	}

	@BeforeEach
	void lay() throws IOException {
		Files.writeString(folder.resolve("leaf.svg"), LEAF);
		Files.writeString(folder.resolve("bare.svg"), BARE);
		for (String ending : List.of("svg", "dxf", "plt", "png", "frjob", "csv")) {
			Files.createDirectory(folder.resolve("folder." + ending));
		}
	}

	/** What begins with @ lies in the folder of the test. */
	private Answer frisket(String... arguments) {
		String[] placed = Arrays.stream(arguments)
				.map(each -> each.startsWith("@") ? folder.resolve(each.substring(1)).toString() : each).toArray(String[]::new);
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(placed, new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		return new Answer(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	private Answer frisket(List<String> head, String... more) {
		List<String> all = new ArrayList<>(head);
		all.addAll(List.of(more));
		return frisket(all.toArray(String[]::new));
	}

	private Answer compose(String... more) {
		return frisket(List.of("compose", "--text", "Ferry", "--font", "Liberation Serif"), more);
	}

	private List<String> files() throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			return files.map(path -> folder.relativize(path).toString()).sorted().toList();
		}
	}

	private static void assertRefused(Answer answer, String... words) {
		assertEquals(2, answer.status(), answer.toString());
		assertEquals("", answer.out());
		assertEquals(1, answer.err().lines().count(), answer.err());
		for (String word : words) {
			assertTrue(answer.err().contains(word), answer.err());
		}
		assertFalse(answer.err().contains("java."), answer.err());
		assertFalse(answer.err().contains("mistake of the program"), answer.err());
	}

	@Test
	void aMissingFileIsSaidToBeMissing() {
		for (String call : List.of("inspect none.svg", "clean none.dxf", "import none.plt", "impose none.svg",
				"inspect none.frjob", "export none.frjob", "run none.frjob")) {
			assertRefused(frisket(whole(call)), folder.resolve(name(call)) + ": there is no such file");
		}
	}

	@Test
	void aFolderIsSaidToBeAFolder() throws IOException {
		List<String> before = files();
		for (String call : List.of("inspect folder.svg", "clean folder.dxf", "import folder.plt", "import folder.png",
				"impose folder.svg", "inspect folder.frjob", "export folder.frjob", "run folder.frjob", "trace folder.png",
				"stock import folder.csv")) {
			assertRefused(frisket(whole(call)), folder.resolve(name(call)).toString(), ": this is a folder");
		}
		assertEquals(before, files());
	}

	private static String name(String call) {
		return call.substring(call.lastIndexOf(' ') + 1);
	}

	/** With what else the verb needs. */
	private static String[] whole(String call) {
		List<String> arguments = new ArrayList<>(List.of(call.split(" ")));
		arguments.set(arguments.size() - 1, "@" + name(call));
		switch (arguments.get(0)) {
		case "clean", "export", "trace" -> arguments.addAll(List.of("--out", "@made.svg"));
		case "import" -> arguments.addAll(List.of("--out", "@made.frjob"));
		case "impose" -> arguments.addAll(List.of("--sheet", "A4", "--steps", "1"));
		default -> {
			// needs nothing more
		}
		}
		return arguments.toArray(String[]::new);
	}

	@Test
	void whatHoldsNothingIsRefusedByEveryVerbThatReadsArt() throws IOException {
		List<String> before = files();
		assertRefused(frisket("inspect", "@bare.svg"), "bare.svg: there is nothing in it");
		assertRefused(frisket("clean", "@bare.svg", "--out", "@made.svg"), "bare.svg: there is nothing in it");
		assertRefused(frisket("import", "@bare.svg", "--out", "@made.frjob"), "bare.svg: there is nothing in it");
		assertEquals(before, files());
	}

	@Test
	void aToleranceThatLeavesNothingIsRefused() throws IOException {
		List<String> before = files();
		assertRefused(frisket("clean", "@leaf.svg", "--out", "@made.svg", "--tolerance", "1000mm"),
				"leaf.svg: nothing is left of it", "1000 mm", "--tolerance");
		assertEquals(before, files());
	}

	@Test
	void wordingOfWhichNothingIsLeftBlocks() {
		Answer tiny = compose("--height", "0.0001mm", "--out", "@tiny.svg");
		assertEquals(1, tiny.status(), tiny.toString());
		assertTrue(tiny.out().contains("blocking nothing-left e1"), tiny.out());
		Answer coarse = compose("--height", "40mm", "--tolerance", "90mm", "--out", "@coarse.svg");
		assertEquals(1, coarse.status(), coarse.toString());
		Answer eaten = compose("--height", "20mm", "--embolden", "-10mm", "--out", "@eaten.svg");
		assertEquals(1, eaten.status(), eaten.toString());
		assertTrue(eaten.out().contains("blocking letters-vanished e1"), eaten.out());
		assertFalse(eaten.out().contains("nothing-left"), eaten.out());
	}

	@Test
	void ofSeveralFilesAllAreWrittenOrNone() throws IOException {
		Files.writeString(folder.resolve("old.svg"), "as it was");
		List<String> before = files();
		assertRefused(compose("--height", "20mm", "--out", "@old.svg", "--out", "@new.frjob", "--out", "@none/lane.svg"),
				"cannot write " + folder.resolve("none/lane.svg") + ": there is no folder");
		assertEquals(before, files());
		assertEquals("as it was", Files.readString(folder.resolve("old.svg")));
		assertRefused(compose("--height", "20mm", "--out", "@new.dxf", "--out", "@folder.svg"), "this is a folder");
		assertEquals(before, files());
	}

	@Test
	void severalFilesAreWhatEachIsAlone() throws IOException {
		assertEquals(0, compose("--height", "30mm", "--out", "@a.svg", "--out", "@a.frjob", "--out", "@a.dxf").status());
		for (String ending : List.of("svg", "frjob", "dxf")) {
			assertEquals(0, compose("--height", "30mm", "--out", "@b." + ending).status());
			assertEquals(-1, Files.mismatch(folder.resolve("a." + ending), folder.resolve("b." + ending)), ending);
		}
	}

	@Test
	void sheetsOfJobsAreWrittenWithTheJobOrNotAtAll() throws IOException {
		assertEquals(0, compose("--height", "30mm", "--out", "@ferry.frjob").status());
		List<String> before = files();
		assertRefused(frisket("impose", "@ferry.frjob", "--sheet", "A4", "--steps", "1", "--out", "@laid.frjob", "--out",
				"@none/laid.svg"), folder.resolve("none/laid.svg").toString());
		assertEquals(before, files());
		Answer laid = frisket("impose", "@ferry.frjob", "--sheet", "A4", "--steps", "1", "--out", "@laid.frjob", "--out",
				"@laid.svg");
		assertEquals(0, laid.status(), laid.toString());
		assertTrue(laid.out().contains("wrote " + folder.resolve("laid.svg")), laid.out());
		assertTrue(Files.exists(folder.resolve("laid.frjob")));
	}

	@Test
	void exportLooksAtEveryPlaceBeforeItWrites() throws IOException {
		assertEquals(0, compose("--height", "30mm", "--out", "@ferry.frjob").status());
		List<String> before = files();
		assertRefused(frisket("export", "@ferry.frjob", "--out", "@a.svg", "--out", "@none/b.svg"), "there is no folder");
		assertRefused(frisket("export", "@ferry.frjob", "--out", "@a.svg", "--out", "@a.dxf", "--save-preset", "two"),
				"--save-preset");
		assertRefused(frisket("export", "@ferry.frjob", "--format", "svg", "--out", "@leaf.svg/made"), "leaf.svg is a file");
		assertEquals(before, files());
		assertRefused(frisket("export", "@ferry.frjob", "--format", "svg", "--name", "a/b", "--out", "@made"),
				"cannot stand in the name of a file");
		assertRefused(frisket("export", "@ferry.frjob", "--format", "svg", "--out", "@cut/monday"),
				"cannot be made: there is no folder " + folder.resolve("cut"));
	}

	@Test
	void whatOnlyMatsHaveNeedsAMat() {
		for (String option : List.of("--corners mitre", "--holes fill", "--mat-form frame", "--frame ellipse",
				"--shadow 2mm,2mm", "--frame-margin 2mm", "--mat-radius 2mm")) {
			String[] words = option.split(" ");
			assertRefused(compose("--height", "20mm", words[0], words[1], "--out", "@made.svg"), words[0] + ": there is no mat");
			assertEquals(0, compose("--height", "20mm", "--mat", "3mm", words[0], words[1], "--out", "@made.svg").status());
		}
	}

	@Test
	void aBoxAndAHeightAreNotBothMeant() {
		assertRefused(compose("--height", "20mm", "--fit", "100x40mm", "--out", "@made.svg"), "--fit", "--height");
	}

	@Test
	void whatIsSetTwiceIsRefused() {
		assertRefused(frisket("clean", "@leaf.svg", "--out", "@made.svg", "--set", "gap=0.1mm", "--set", "gap=0.2mm"),
				"--set: “gap” is given twice");
		assertEquals(0, frisket("clean", "@leaf.svg", "--out", "@made.svg", "--set", "gap=0.1mm", "--set", "level=0.05mm")
				.status());
	}

	@Test
	void valuesThatAreNoneAreQuoted() {
		assertRefused(frisket("glyphs", "--font", "Liberation Serif", "--date", "2026-13-01", "--out", "@made.pdf"), "--date",
				"“2026-13-01” is not a day");
		assertRefused(frisket("settings", "advise", "--family", "card", "--grammage", "NaN"), "“NaN” is not a number");
		assertRefused(frisket("settings", "advise", "--family", "card", "--grammage", "-5"), "--grammage: -5");
		assertRefused(frisket("impose", "@leaf.svg", "--sheet", "A4", "--sheets", "many"), "“many” is not a whole number");
		assertRefused(frisket("trace", "@folder.png", "--out", "a\0b.svg"), "cannot be the name of a file");
		assertRefused(compose("--height", "20mm", "--line-space", "-1", "--out", "@made.svg"), "--line-space: “-1”");
		assertRefused(compose("--height", "20mm", "--features", "x", "--out", "@made.svg"), "--features: ");
	}

	@Test
	void aJobOfWhichNothingCanBeLaidIsRefused() throws IOException {
		Files.writeString(folder.resolve("art.svg"), LEAF);
		assertEquals(0, frisket("import", "@art.svg", "--set", "as=picture", "--out", "@art.frjob").status());
		List<String> before = files();
		assertRefused(frisket("impose", "@art.frjob", "--sheet", "A4", "--steps", "1", "--out", "@laid.frjob"),
				folder.resolve("art.frjob") + ": there is no part in it to lay");
		assertEquals(before, files());
	}

	/** Advice is made of them. */
	@Test
	void settingsThatNoMachineCanHaveAreNotKept() {
		String[] trial = { "settings", "trial", "add", "--studio", "@studio", "--family", "card", "--verdict", "through" };
		assertRefused(frisket(List.of(trial), "--pressure", "-5", "--speed", "30"), "--pressure: -5 is not between");
		assertRefused(frisket(List.of(trial), "--pressure", "25", "--speed", "3000"), "--speed: 3000 is not between");
		assertRefused(frisket(List.of(trial), "--pressure", "25", "--speed", "30", "--passes", "0"), "--passes");
		assertRefused(frisket("settings", "run", "add", "tags", "--studio", "@studio", "--family", "card", "--pressure", "-5",
				"--speed", "30", "--length", "900mm", "--verdict", "through"), "--pressure: -5 is not between");
		assertEquals("", frisket("settings", "trial", "list", "--studio", "@studio").out());
		assertEquals("", frisket("settings", "run", "list", "--studio", "@studio").out());
		assertRefused(frisket("settings", "tool", "add", "b1", "--kind", "saw", "--studio", "@studio"), "--kind: “saw”",
				"creasing-wheel");
	}

	@Test
	void oneCellHasOneVerdict() {
		Answer made = frisket("settings", "test-sheet", "--studio", "@studio", "--family", "card", "--grammage", "216",
				"--across", "pressure=10,20", "--down", "speed=10,20", "--out", "@trials.svg");
		assertEquals(0, made.status(), made.toString());
		assertRefused(frisket("settings", "verdicts", "sheet-1", "A1=through", "A1=torn", "--studio", "@studio"),
				"cell A1 is judged twice");
	}

	@Test
	void aRollIsNotWeighed() {
		assertRefused(frisket("stock", "weigh", "--size", "roll 610mm", "--mass", "163.3g"), "--size: a roll cannot be weighed");
	}

	@Test
	void anUnknownVerbIsNamedWithThoseThereAre() {
		assertRefused(frisket("cutt"), "there is no verb “cutt”", "compose, ");
		assertRefused(frisket("stock", "wiegh"), "frisket stock: there is no verb “wiegh”", "weigh, ");
	}

	@Test
	void thatNoFontCanSetATextIsOneShortSentence() {
		Answer answer = frisket("fonts", "--for", "\uFFFE", "--height", "30mm");
		assertRefused(answer, "--for: none of the ", "such as: ");
		assertTrue(answer.err().length() < 300, answer.err());
	}

	/** What is no exception would end the platform as if all were done. */
	@Test
	void memoryThatDoesNotSufficeIsTold() {
		OutputStream full = new OutputStream() {
			@Override
			public void write(int b) {
				throw new OutOfMemoryError("as it comes from the machine");
			}
		};
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(new String[] { "stock", "convert", "65 lb cover" }, new PrintStream(full, true),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		assertEquals(2, status);
		assertEquals("frisket: there is too little memory for this", err.toString(StandardCharsets.UTF_8).strip());
	}
}
