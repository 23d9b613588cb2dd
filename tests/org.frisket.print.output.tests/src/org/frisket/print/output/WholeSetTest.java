package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;

import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Sheet;
import org.frisket.prepare.extension.Contribution;
import org.frisket.testkit.SampleJobs;
import org.frisket.toolpath.RunChoices;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prints and cuts of two sheets: all files, or none, and what stood there before stays. */
class WholeSetTest {

	@TempDir
	private Path folder;

	private WholeSet set() {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		Sheet second = Jobs.addSheet(sample.job, null, 200, 150);
		Jobs.addPlacement(second, sample.card.getId(), 100, 75, 0);
		List<PrintAndCut> sheets = SheetFaces
				.of(sample.job, Map.of(sample.job.getId(), SampleJobs.prepared(sample.job)), false, Tolerance.DEFAULT, Monitor.NONE)
				.stream().map(faces -> PrintAndCut.of(PrintSheet.of(faces, PrintOptions.USUAL, Tolerance.DEFAULT, Monitor.NONE),
						Optional.empty(), Optional.empty())).toList();
		Contribution<Exporter> svg = Exporters.forFile("x.svg").orElseThrow();
		return new WholeSet(sheets, List.of(folder.resolve("10247-1"), folder.resolve("10247-2")), svg);
	}

	private List<Path> write(WholeSet set, Monitor monitor) throws Exception {
		return set.write(Map.of(), () -> {
			throw new IOException("no workshop");
		}, RunChoices.plain(), Tolerance.DEFAULT, monitor);
	}

	/** Names and lengths of all that is in the folder, hidden or not. */
	private Map<String, Long> there() throws IOException {
		Map<String, Long> there = new TreeMap<>();
		try (var files = Files.list(folder)) {
			for (Path each : files.toList()) {
				there.put(each.getFileName().toString(), Files.isDirectory(each) ? -1 : Files.size(each));
			}
		}
		return there;
	}

	@Test
	void allFilesAreWrittenAndNothingElse() throws Exception {
		WholeSet set = set();
		assertEquals(set.targets(), write(set, Monitor.NONE));
		assertEquals(List.of("10247-1-cut.svg", "10247-1-print.pdf", "10247-2-cut.svg", "10247-2-print.pdf"),
				List.copyOf(there().keySet()));
		assertTrue(Files.readString(folder.resolve("10247-1-print.pdf"), StandardCharsets.ISO_8859_1).startsWith("%PDF"));
	}

	/** Called off after ever more steps, until one time nobody asks again: nothing is there before, all of it then. */
	@Test
	void whateverIsCalledOffLeavesNothing() throws Exception {
		WholeSet set = set();
		Files.writeString(folder.resolve("10247-1-print.pdf"), "what was there");
		Map<String, Long> before = there();
		int steps = 0;
		for (int allowed = 0;; allowed = allowed * 2 + 1) {
			AtomicInteger asked = new AtomicInteger();
			int most = allowed;
			try {
				write(set, () -> asked.incrementAndGet() > most);
				break;
			} catch (CancellationException e) {
				assertEquals(before, there());
				steps++;
			}
		}
		assertTrue(steps > 2, steps + " steps");
		assertEquals(4, there().size());
		assertTrue(Files.size(folder.resolve("10247-1-print.pdf")) > 1000);
	}

	@Test
	void whereOneCannotBeBroughtNoneIs() throws Exception {
		WholeSet set = set();
		Files.writeString(folder.resolve("10247-1-print.pdf"), "what was there");
		Files.createDirectories(folder.resolve("10247-2-cut.svg/inside"));
		Map<String, Long> before = there();
		String why = assertThrows(IOException.class, () -> write(set, Monitor.NONE)).getMessage();
		assertTrue(why.contains("10247-2-cut.svg") && why.contains("folder"), why);
		assertEquals(before, there());
		assertEquals("what was there", Files.readString(folder.resolve("10247-1-print.pdf")));
	}

	@Test
	void aFolderThatIsNotThereIsNamed() {
		WholeSet set = new WholeSet(sheets(), List.of(folder.resolve("none/10247-1")),
				Exporters.forFile("x.svg").orElseThrow());
		String why = assertThrows(IOException.class, () -> write(set, Monitor.NONE)).getMessage();
		assertTrue(why.contains("none"), why);
	}

	private static List<PrintAndCut> sheets() {
		SampleSheet sample = new SampleSheet();
		return List.of(PrintAndCut.of(sample.print(PrintOptions.USUAL), Optional.empty(), Optional.empty()));
	}
}
