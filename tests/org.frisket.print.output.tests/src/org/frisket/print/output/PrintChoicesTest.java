package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

import org.frisket.print.register.PrinterProfile;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.StudioPreferences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PrintChoicesTest {

	@TempDir
	private Path folder;

	private StudioPreferences preferences() {
		return new StudioFolder(folder).preferences();
	}

	@Test
	void whatWasChosenIsThereAgain() throws IOException {
		assertEquals(PrintChoices.USUAL, PrintChoices.kept(preferences()));
		PrinterProfile desk = new PrinterProfile("Front desk", 1.002, 0.999, 0, LocalDate.of(2026, 11, 30), 4);
		PrintOptions options = new PrintOptions(4.5, true, TurnEdge.HEAD, false, false, true, Optional.of(desk));
		new PrintChoices(options, "Front desk", "org.frisket.export.svg", "/prints", "{job}-{sheet}").keep(preferences());
		PrintChoices kept = PrintChoices.kept(preferences());
		assertEquals(new PrintChoices(new PrintOptions(4.5, true, TurnEdge.HEAD, false, false, true, Optional.empty()), "Front desk",
				"org.frisket.export.svg", "/prints", "{job}-{sheet}"), kept);
	}

	@Test
	void whatSomebodySpoiltIsAsUsual() throws IOException {
		PrintChoices.USUAL.keep(preferences());
		Path file;
		try (var files = Files.list(folder)) {
			file = files.findFirst().orElseThrow();
		}
		Files.writeString(file, Files.readString(file).replace("print.turn=side", "print.turn=diagonal").replace("print.bleed=3.0",
				"print.bleed=9000"));
		assertEquals(PrintChoices.USUAL, PrintChoices.kept(preferences()));
	}

	@Test
	void theLongEdgeIsKnown() {
		assertEquals(true, TurnEdge.SIDE.isLongEdge(210, 297));
		assertEquals(false, TurnEdge.SIDE.isLongEdge(297, 210));
		assertEquals(false, TurnEdge.HEAD.isLongEdge(210, 297));
		assertEquals(true, TurnEdge.HEAD.isLongEdge(297, 210));
	}
}
