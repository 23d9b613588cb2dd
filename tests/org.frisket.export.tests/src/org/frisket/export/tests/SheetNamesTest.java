package org.frisket.export.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

import org.frisket.export.names.NamePattern;
import org.frisket.export.names.SheetNames;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What files that are handed out are called. */
class SheetNamesTest {

	private static Job job(String... stocks) {
		Job job = Jobs.create("job", "Ferry banner");
		for (String stock : stocks) {
			Jobs.addSheet(job, stock, 300, 200);
		}
		return job;
	}

	private static List<String> names(String pattern, Job job) {
		return new SheetNames(job, "cutter", "dxf").of(NamePattern.parse(pattern), job.getSheets());
	}

	private static String refused(String pattern, Job job) {
		return assertThrows(IllegalArgumentException.class, () -> names(pattern, job)).getMessage();
	}

	@Test
	void fieldsStandForWhatTheJobSays() {
		Job job = job("card-300", "film");
		job.setNumber("1041");
		job.setCustomer("Tern & Daughters");
		job.setDue(LocalDate.of(2026, 12, 5));
		job.getSheets().get(1).setColour("#1d6f78");
		assertEquals(List.of("1041-1-card-300.dxf", "1041-2-film.dxf"), names(NamePattern.USUAL, job));
		assertEquals(List.of("Ferry banner 1 of 2, Tern & Daughters 2026-12-05 cutter dxf.dxf",
				"Ferry banner 2 of 2, Tern & Daughters 2026-12-05 cutter dxf 1d6f78.dxf"),
				names("{title} {sheet} of {sheets}, {customer} {due} {machine} {format} {colour}", job));
	}

	@Test
	void emptyFieldTakesWhatPartsItAlong() {
		assertEquals(List.of("Ferry banner-1.dxf", "Ferry banner-2.dxf"), names(NamePattern.USUAL, job(null, null)));
		assertEquals(List.of("Ferry banner.dxf"), names(NamePattern.USUAL, job()), "the bench has no sheet");
		assertEquals(List.of("1-Ferry banner.dxf"), names("{number}-{sheet}-{title}", job("card")));
	}

	@Test
	void sheetsAreNumberedSoThatTheySortRight() {
		List<String> names = names("{sheet}", job(new String[12]));
		assertEquals("01.dxf", names.get(0));
		assertEquals(names.stream().sorted().toList(), names);
	}

	@Test
	void wrongPatternsAreToldWithTheirPlace() {
		Job job = job("card", "card");
		assertTrue(refused("{job}-{shet}", job).contains("character 7: there is no field “shet”"), refused("{job}-{shet}", job));
		assertTrue(refused("{job", job).contains("character 1"), refused("{job", job));
		assertTrue(refused("a}", job).contains("character 2"), refused("a}", job));
		assertTrue(refused("{sheet}/{job}", job).contains("character 8: “/”"), refused("{sheet}/{job}", job));
		assertFalse(refused(" ", job).isEmpty());
		assertTrue(refused("{number}", job("card")).contains("{number}"));
	}

	@Test
	void noTwoSheetsHaveOneName() {
		String message = refused("{job}-{stock}", job("a", "b"));
		assertTrue(message.contains("{sheet}"), message);
		assertEquals(List.of("Ferry banner.dxf"), names("{job}", job("a")), "one sheet needs no number");
		// 1 before 10 would be 110, as 11 before 0 is; numbers of one length keep them apart
		Job many = job("10", "x", "x", "x", "x", "x", "x", "x", "x", "x", "0");
		assertEquals(11, new HashSet<>(names("{sheet}{stock}", many)).size());
	}

	@Test
	void tooLongANameIsRefusedWithItsLength() {
		Job job = job("card");
		job.setTitle("ferry".repeat(100));
		assertTrue(names("{title}-{sheet}", job).get(0).length() < 100);
		assertTrue(refused("{title}{title}{title}{sheet}", job).contains("220"));
	}

	@TempDir
	private Path folder;

	/** Whatever a job, a customer and a stock are called: each sheet has a name of its own that this computer and Windows take. */
	@Test
	void anyTitleGivesValidNamesThatDiffer() throws Exception {
		Random random = new Random(41);
		String[] hard = { "CON", "aux.txt", "..", ".", " ", "-", "a/b\\c", "x\u0000y", "Größe ½", "\ud83d\ude00", "\ud83d", "e\u0301",
				"\u202Egnp", "{sheet}", "name. ", "…", "NUL", "lpt1", "a\nb", "*?\"<>|:", "\uFEFF", "日本語".repeat(60) };
		for (int i = 0; i < 400; i++) {
			Job job = job(text(random, hard), text(random, hard), text(random, hard));
			job.setTitle(text(random, hard));
			job.setNumber(text(random, hard));
			job.setCustomer(text(random, hard));
			Set<String> seen = new HashSet<>();
			for (String name : names(NamePattern.USUAL, job)) {
				assertTrue(seen.add(name.toLowerCase(Locale.ROOT)), name);
				assertTrue(name.endsWith(".dxf"), name);
				assertTrue(name.getBytes(StandardCharsets.UTF_8).length <= 240, name);
				assertFalse(name.matches("(?s).*[<>:\"/\\\\|?*\\p{Cntrl}].*|^[. ].*|.*[. ]\\.dxf"), name);
				assertFalse(name.matches("(?i)(con|prn|aux|nul|com\\d|lpt\\d)\\..*"), name);
				Path file = folder.resolve(name);
				assertEquals(folder, file.getParent(), name);
				Files.writeString(file, "");
				Files.delete(file);
			}
		}
	}

	private static String text(Random random, String[] hard) {
		if (random.nextBoolean()) {
			return hard[random.nextInt(hard.length)];
		}
		StringBuilder text = new StringBuilder();
		for (int i = random.nextInt(12); i > 0; i--) {
			text.appendCodePoint(random.nextInt(4) == 0 ? random.nextInt(0x10FFFF) : random.nextInt(0x180));
		}
		return text.toString();
	}
}
