package org.frisket.export.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

import org.frisket.export.preset.Preset;
import org.frisket.export.preset.Presets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exports by name. */
class PresetsTest {

	@TempDir
	private Path studio;

	private Path folder() {
		return studio.resolve("presets");
	}

	private static Preset preset(String name, String value) {
		return new Preset(name, "org.frisket.export.svg.export", Map.of("margin", value, "fill", "none"),
				Map.of("overcut", "1mm"), "cutter", "{job}-{sheet}", "/media/studio/CARD");
	}

	@Test
	void whatIsSavedIsReadAgainWhateverIsInIt() throws Exception {
		Random random = new Random(7);
		String[] odd = { " 2mm ", "a = b", "# no remark", "\\n", "line\nline\r", "", "ü ½", "\u00a0x\u2028", "\t", "\\", "x\u0085", "\u3000" };
		Presets presets = Presets.in(folder());
		assertEquals(List.of(), presets.all());
		for (int i = 0; i < 60; i++) {
			presets.save(preset("Tags " + random.nextInt(30), odd[random.nextInt(odd.length)] + odd[random.nextInt(odd.length)]));
			Presets again = Presets.in(folder());
			assertEquals(List.of(), again.problems());
			assertEquals(presets.all(), again.all());
		}
	}

	@Test
	void fileIsForPeopleAndHasNoHalves() throws Exception {
		Presets.in(folder()).save(preset("Gift tags", "2mm"));
		assertEquals("""
				name = Gift tags
				format = org.frisket.export.svg.export
				option.fill = none
				option.margin = 2mm
				run.overcut = 1mm
				machine = cutter
				names = {job}-{sheet}
				folder = /media/studio/CARD
				""", Files.readString(folder().resolve("gift-tags.preset")));
		try (Stream<Path> files = Files.list(folder())) {
			assertEquals(1, files.count());
		}
	}

	@Test
	void savingAgainReplacesAndDeletingRemoves() throws Exception {
		Presets presets = Presets.in(folder());
		presets.save(preset("Gift tags", "2mm"));
		presets.save(preset("gift tags", "3mm"));
		presets.save(preset("Gift, tags", "4mm"));
		assertEquals(List.of("Gift, tags", "gift tags"), Presets.in(folder()).all().stream().map(Preset::name).toList());
		presets.delete("GIFT TAGS");
		presets.delete("never there");
		assertEquals(List.of("Gift, tags"), Presets.in(folder()).all().stream().map(Preset::name).toList());
	}

	private String problem(String text) throws IOException {
		Files.createDirectories(folder());
		Files.writeString(folder().resolve("bad.preset"), text);
		Files.writeString(folder().resolve("good.preset"), "# by hand\n\nname=Good\nformat = x\nfuture.key = 1\n");
		Presets presets = Presets.in(folder());
		assertEquals(List.of("Good"), presets.all().stream().map(Preset::name).toList(), "the others hold");
		assertEquals(1, presets.problems().size(), presets.problems()::toString);
		String problem = presets.problems().get(0);
		assertTrue(problem.contains(folder().resolve("bad.preset").toString()), problem);
		return problem;
	}

	@Test
	void badFilesAreToldWithLineAndReason() throws Exception {
		assertTrue(problem("name = A\nformat = x\nno line\n").contains("line 3: this is no line of the form key = value"));
		assertTrue(problem("name = A\nname = B\n").contains("line 2: “name” was said before"));
		assertTrue(problem("name = A\nformat = x\noption.margin = 2\\q\n").contains("line 3: “\\q”"));
		assertTrue(problem("format = x\n").contains("it has no name"));
		assertTrue(problem("name = A\n").contains("it names no format"));
		Files.write(folder().resolve("bad.preset"), new byte[] { 'n', '=', (byte) 0xC3, (byte) 0x28 });
		assertTrue(Presets.in(folder()).problems().get(0).contains("UTF-8"));
		Files.writeString(folder().resolve("bad.preset"), "#".repeat(200_000));
		assertTrue(Presets.in(folder()).problems().get(0).contains("too large"));
	}

	@Test
	void folderThatCannotBeMadeIsTold() throws Exception {
		Files.writeString(folder(), "in the way");
		IOException failed = assertThrows(IOException.class, () -> Presets.in(folder()).save(preset("A", "1mm")));
		assertTrue(failed.getMessage().contains(folder().toString()), failed.getMessage());
		assertEquals("in the way", Files.readString(folder()));
	}
}
