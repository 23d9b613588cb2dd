package org.frisket.export.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.frisket.export.Exporters;
import org.frisket.export.WorkshopSource;
import org.frisket.export.names.NamePattern;
import org.frisket.export.plan.Destination;
import org.frisket.export.plan.HandoffPlan;
import org.frisket.export.plan.HandoffReport;
import org.frisket.export.plan.HandoffRequest;
import org.frisket.export.plan.SheetChoice;
import org.frisket.export.plan.StudioWorkshop;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedJob;
import org.frisket.run.Workshop;
import org.frisket.studio.StudioFolder;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job is handed out sheet by sheet. */
class HandoffPlanTest {

	private static final WorkshopSource PLAIN = Workshop::plain;

	@TempDir
	private Path folder;

	/** Two squares as one part; a sheet for each stock, with one copy more on every next. */
	private static Job job(String... stocks) {
		Job job = SampleJobs.outline("M0 0H10V10H0Z M20 0H30V10H20Z", OperationKind.CUT);
		String part = Jobs.elements(job).get(0).getId();
		for (int i = 0; i < stocks.length; i++) {
			Sheet sheet = Jobs.addSheet(job, stocks[i], 300, 200);
			for (int copy = 0; copy <= i; copy++) {
				Jobs.addPlacement(sheet, part, 20 + 40 * copy, 20, 0);
			}
		}
		return job;
	}

	private static HandoffRequest request(SheetChoice sheets, String ending, Destination destination) {
		return new HandoffRequest(sheets, Exporters.forFile("." + ending).orElseThrow(), Map.of(), destination, Map.of());
	}

	private Destination named(String pattern) {
		return Destination.folder(folder, NamePattern.parse(pattern));
	}

	private static HandoffPlan plan(HandoffRequest request, Job job) throws IOException {
		return HandoffPlan.of(request, job, Map.of(job.getId(), SampleJobs.prepared(job)), PLAIN, Tolerance.DEFAULT,
				Monitor.NONE);
	}

	private static HandoffReport write(HandoffRequest request, Job job) throws IOException {
		return plan(request, job).write(Monitor.NONE);
	}

	private List<String> files() throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.map(path -> path.getFileName().toString()).sorted().toList();
		}
	}

	private String text(String name) throws IOException {
		return Files.readString(folder.resolve(name));
	}

	@Test
	void everySheetIsAFileOfItsOwn() throws Exception {
		HandoffReport report = write(request(SheetChoice.ALL, "count", named("{job}-{sheet}-{stock}")), job("card", "film"));
		assertEquals(List.of("A shape-1-card.count", "A shape-2-film.count"), files());
		assertEquals(2, report.written().size());
		assertEquals("2 pieces", text("A shape-1-card.count"));
		assertEquals("4 pieces", text("A shape-2-film.count"));
	}

	@Test
	void chosenSheetsKeepTheirNumbers() throws Exception {
		write(request(SheetChoice.of("3, 1-2, 2"), "count", named("{sheet}")), job("a", "b", "c", "d"));
		assertEquals(List.of("1.count", "2.count", "3.count"), files());
		for (String wrong : List.of("0", "5", "2-1", "x", "1,,2", "1-", "99999999")) {
			assertThrows(IllegalArgumentException.class,
					() -> SheetChoice.of(wrong).of(job("a", "b", "c", "d")), wrong);
		}
		assertTrue(assertThrows(IllegalArgumentException.class, () -> SheetChoice.of("1").of(job())).getMessage()
				.contains("no sheets"));
	}

	@Test
	void benchIsHandedOutWhenAskedForOrWithoutSheets() throws Exception {
		Path file = folder.resolve("bench.count");
		write(request(SheetChoice.BENCH, "count", Destination.file(file)), job("a", "b"));
		assertEquals("2 pieces", Files.readString(file));
		write(request(SheetChoice.ALL, "count", Destination.file(file)), job());
		assertEquals("2 pieces", Files.readString(file));
	}

	@Test
	void severalSheetsDoNotGoIntoOneFile() throws Exception {
		HandoffRequest request = request(SheetChoice.ALL, "count", Destination.file(folder.resolve("a.count")));
		assertTrue(assertThrows(IllegalArgumentException.class, () -> plan(request, job("a", "b"))).getMessage()
				.contains("2 sheets"));
		write(request, job("a"));
		assertEquals(List.of("a.count"), files());
	}

	@Test
	void oneThatFailsKeepsNoneOfTheOthersAway() throws Exception {
		Files.createDirectory(folder.resolve("1.count"));
		HandoffReport report = write(request(SheetChoice.ALL, "count", named("{sheet}")), job("a", "b", "c"));
		assertEquals(List.of("1.count", "2.count", "3.count"), files());
		assertEquals(2, report.written().size());
		assertEquals(1, report.failed().size());
		assertTrue(report.failed().get(0).trouble().orElseThrow().contains("1.count: this is a folder"),
				report.failed().get(0).trouble()::toString);
	}

	@Test
	void folderThatGoesMeanwhileIsToldForEachFile() throws Exception {
		Path drive = Files.createDirectory(folder.resolve("drive"));
		HandoffPlan plan = plan(request(SheetChoice.ALL, "count", Destination.folder(drive, NamePattern.parse("{sheet}"))),
				job("a", "b"));
		HandoffReport report = plan.write(new Monitor() {
			@Override
			public boolean isCancelled() {
				if (Files.exists(drive.resolve("1.count"))) {
					try {
						Files.delete(drive.resolve("1.count"));
						Files.delete(drive);
					} catch (IOException e) {
						throw new AssertionError(e);
					}
				}
				return false;
			}
		});
		assertEquals(1, report.failed().size());
		assertTrue(report.failed().get(0).trouble().orElseThrow().contains("there is no folder " + drive));
	}

	@Test
	void cancelKeepsWhatIsWrittenAndNoHalves() throws Exception {
		HandoffReport report = plan(request(SheetChoice.ALL, "count", named("{sheet}")), job("a", "b", "c"))
				.write(() -> Files.exists(folder.resolve("2.count")));
		assertTrue(report.calledOff() != null);
		assertEquals(List.of("1.count", "2.count"), files());
	}

	/** A drive with room for one of two files. */
	@Test
	void fullDriveKeepsWhatFitsAndNoHalves() throws Exception {
		Process mount = new ProcessBuilder("mount", "-t", "tmpfs", "-o", "size=128k", "tmpfs", folder.toString())
				.redirectErrorStream(true).start();
		Assumptions.assumeTrue(mount.waitFor() == 0, "only root can mount a small drive");
		try {
			Files.writeString(folder.resolve("2.bulky"), "as it was");
			HandoffReport report = write(request(SheetChoice.ALL, "bulky", named("{sheet}")), job("card", "bulky", "film"));
			assertEquals(List.of("1.bulky", "2.bulky", "3.bulky"), files());
			assertEquals("as it was", text("2.bulky"));
			String trouble = report.failed().get(0).trouble().orElseThrow();
			assertTrue(trouble.contains("2.bulky") && trouble.contains("No space left"), trouble);
		} finally {
			assertEquals(0, new ProcessBuilder("umount", folder.toString()).start().waitFor());
		}
	}

	@Test
	void machineIsLookedUpOnlyForWhatNeedsIt() throws Exception {
		WorkshopSource none = () -> {
			throw new IOException("the store is in use");
		};
		Job job = job("card");
		Map<String, PreparedJob> jobs = Map.of(job.getId(), SampleJobs.prepared(job));
		HandoffPlan plan = HandoffPlan.of(request(SheetChoice.ALL, "count", named("{sheet}")), job, jobs, none,
				Tolerance.DEFAULT, Monitor.NONE);
		assertEquals(1, plan.write(Monitor.NONE).written().size());
		assertThrows(IOException.class, () -> HandoffPlan.of(request(SheetChoice.ALL, "count", named("{machine}")), job, jobs,
				none, Tolerance.DEFAULT, Monitor.NONE));
		assertThrows(UncheckedIOException.class, () -> plan.items().get(0).handoff().run(Monitor.NONE));
		assertFalse(plan.items().isEmpty());
	}

	@Test
	void machineThatIsNotThereIsNamedWithThoseThatAre() throws Exception {
		StudioFolder studio = new StudioFolder(folder.resolve("studio"));
		IOException refused = assertThrows(IOException.class, () -> new StudioWorkshop(studio, "cutter").get());
		assertTrue(refused.getMessage().contains("“cutter”") && refused.getMessage().contains("plain"), refused.getMessage());
		assertEquals("plain", new StudioWorkshop(studio, "").get().machine().id());
	}
}
