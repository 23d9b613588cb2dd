package org.frisket.export.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.frisket.export.AbandonedExportException;
import org.frisket.export.ExportTask;
import org.frisket.export.Exporters;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportTaskTest {

	private static final PreparedJob JOB = SampleJobs
			.prepared(SampleJobs.outline("M0 0H10V10H0Z M20 0H30V10H20Z", OperationKind.CUT));

	@TempDir
	private Path folder;

	private void export(String file, Map<String, String> options) throws IOException, ContributionException {
		new ExportTask(Exporters.forFile(file).orElseThrow()).write(Handoff.of(JOB), options, Monitor.NONE, folder.resolve(file));
	}

	private List<String> files() throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.map(path -> path.getFileName().toString()).sorted().toList();
		}
	}

	@Test
	void formatsOfOtherBundlesAreListedWithoutLoadingThem() {
		List<String> ids = Exporters.all().stream().map(Contribution::id).toList();
		assertTrue(ids.contains("org.frisket.export.tests.absent"), ids.toString());
		assertEquals(ids.stream().sorted().toList(), ids);
	}

	@Test
	void fileIsWrittenByTheExporterForItsEnding() throws Exception {
		export("parts.COUNT", Map.of());
		assertEquals("2 pieces", Files.readString(folder.resolve("parts.COUNT")));
		assertEquals(List.of("parts.COUNT"), files());
	}

	@Test
	void optionsReachTheExporter() throws Exception {
		export("a.count", Map.of("unit", "parts", "times", "2"));
		assertEquals("2 parts2 parts", Files.readString(folder.resolve("a.count")));
	}

	@Test
	void oldFileIsReplaced() throws Exception {
		Files.writeString(folder.resolve("a.count"), "old");
		export("a.count", Map.of());
		assertEquals("2 pieces", Files.readString(folder.resolve("a.count")));
	}

	@Test
	void failingExporterIsNamedAndLeavesTheOldFile() throws Exception {
		Files.writeString(folder.resolve("a.broken"), "old");
		ContributionException failure = assertThrows(ContributionException.class, () -> export("a.broken", Map.of()));
		assertTrue(failure.getMessage().contains("org.frisket.export.tests"), failure.getMessage());
		assertTrue(failure.getMessage().contains("out of breath"), failure.getMessage());
		assertEquals("old", Files.readString(folder.resolve("a.broken")));
		assertEquals(List.of("a.broken"), files());
	}

	@Test
	void absentClassIsReportedWithItsBundle() {
		ContributionException failure = assertThrows(ContributionException.class, () -> export("a.absent", Map.of()));
		assertTrue(failure.getMessage().contains("org.frisket.export.tests"), failure.getMessage());
	}

	@Test
	void missingFolderIsNamed() throws Exception {
		IOException failure = assertThrows(IOException.class, () -> export("no/such/a.count", Map.of()));
		assertTrue(failure.getMessage().contains("no/such/a.count"), failure.getMessage());
		assertEquals(List.of(), files());
	}

	@Test
	void folderInPlaceOfTheFileIsRefused() throws Exception {
		Files.createDirectory(folder.resolve("a.count"));
		assertThrows(IOException.class, () -> export("a.count", Map.of()));
		assertEquals(List.of("a.count"), files());
	}

	@Test
	void wrongOptionsAreRefusedBeforeAnythingIsWritten() throws Exception {
		for (Map<String, String> wrong : List.of(Map.of("times", "four"), Map.of("times", "4"), Map.of("shade", "x"))) {
			IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class,
					() -> export("a.count", wrong));
			assertTrue(refusal.getMessage().contains(wrong.keySet().iterator().next()), refusal.getMessage());
		}
		assertEquals(List.of(), files());
	}

	@Test
	void unknownEndingHasNoExporter() {
		assertTrue(Exporters.forFile("a.xyz").isEmpty());
		assertTrue(Exporters.forFile("count").isEmpty());
	}

	@Test
	void exporterThatDoesNotListenHoldsUpNobodyAndItsFileIsNotKept() throws Exception {
		Files.writeString(folder.resolve("a.deaf"), "old");
		DeafExporter.mayEnd = new CountDownLatch(1);
		DeafExporter.begun = new CountDownLatch(1);
		DeafExporter.ended = new CountDownLatch(1);
		try {
			AbandonedExportException left = assertThrows(AbandonedExportException.class,
					() -> new ExportTask(Exporters.forFile("a.deaf").orElseThrow()).write(Handoff.of(JOB), Map.of(),
							() -> DeafExporter.begun.getCount() == 0, folder.resolve("a.deaf")));
			assertEquals("org.frisket.export.tests", left.bundle());
			assertEquals(1, DeafExporter.ended.getCount(), "it is still at it");
			assertEquals(List.of("a.deaf"), files());
		} finally {
			DeafExporter.mayEnd.countDown();
		}
		assertTrue(DeafExporter.ended.await(20, TimeUnit.SECONDS));
		assertEquals("old", Files.readString(folder.resolve("a.deaf")));
		assertEquals(List.of("a.deaf"), files());
	}

	@Test
	void whatIsDoneAfterItWasCalledOffIsNotKept() throws Exception {
		assertThrows(CancellationException.class, () -> new ExportTask(Exporters.forFile("a.count").orElseThrow())
				.write(Handoff.of(JOB), Map.of(), () -> true, folder.resolve("a.count")));
		assertEquals(List.of(), files());
	}
}
