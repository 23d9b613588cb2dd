package org.frisket.model.migration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalInt;

import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.UnreadableJobException;
import org.frisket.model.Wording;
import org.junit.jupiter.api.Test;

class MigrationsTest {

	private static String sample() throws IOException {
		try (InputStream in = MigrationsTest.class.getResourceAsStream("version-0.frjob")) {
			return new String(in.readAllBytes(), StandardCharsets.UTF_8);
		}
	}

	private static Job load(String text) throws IOException {
		return JobFile.load(text.getBytes(StandardCharsets.UTF_8), "version-0.frjob");
	}

	@Test
	void thereIsOneMigrationForEachOlderVersion() {
		List<Migration> all = Migrations.since(0);
		assertEquals(Migrations.currentVersion(), all.size());
		for (int version = 0; version < all.size(); version++) {
			assertEquals(version, all.get(version).from());
		}
		assertTrue(Migrations.since(Migrations.currentVersion()).isEmpty());
	}

	@Test
	void namespacesSayTheirVersion() {
		assertEquals(OptionalInt.of(0), Migrations.version("urn:frisket:job:0"));
		assertEquals(OptionalInt.of(12), Migrations.version("urn:frisket:job:12"));
		for (String other : List.of("urn:frisket:job", "urn:frisket:job:", "urn:frisket:job:01", "urn:frisket:job:1 ",
				"urn:frisket:job:99999999999", "http://www.w3.org/2000/svg")) {
			assertTrue(Migrations.version(other).isEmpty(), other);
		}
	}

	@Test
	void version0IsReadInTodaysTerms() throws IOException {
		Job job = load(sample());
		Wording wording = (Wording) job.getLayers().get(0).getElements().get(0);
		assertEquals(9.5, wording.getHeight());
		assertEquals("capHeight & score", wording.getText());
		assertEquals("Pacifico", wording.getFont().getName());
		assertEquals(OperationKind.CREASE, wording.getOperations().get(0).getKind());
		assertEquals(OperationKind.DRAW, wording.getOperations().get(1).getKind());
		assertEquals("score", wording.getOperations().get(1).getTool());
		Mat mat = (Mat) job.getLayers().get(1).getElements().get(0);
		assertSame(wording, mat.getBehind().get(0));
	}

	@Test
	void version0IsWrittenAsTheCurrentOne() throws IOException {
		String written = new String(JobFile.toBytes(load(sample())), StandardCharsets.UTF_8);
		assertTrue(written.contains("xmlns:frisket=\"urn:frisket:job:1\""), written);
		assertTrue(written.contains(" height=\"9.5\""), written);
		assertTrue(!written.contains("urn:frisket:job:0") && !written.contains("capHeight="), written);
		assertEquals(written, new String(JobFile.toBytes(load(written)), StandardCharsets.UTF_8));
	}

	@Test
	void placesInMessagesAreThoseOfTheOldFile() throws IOException {
		String damaged = sample().replace("capHeight=\"9.5\"", "capHeight=\"tall\"");
		UnreadableJobException e = assertThrows(UnreadableJobException.class, () -> load(damaged));
		assertEquals(4, e.line());
		assertEquals("height is 'tall', which is not a number", e.reason());
	}

	@Test
	void theCurrentVersionIsNotRewritten() throws IOException {
		String text = sample().replace("urn:frisket:job:0", "urn:frisket:job:1");
		UnreadableJobException e = assertThrows(UnreadableJobException.class, () -> load(text));
		assertTrue(e.reason().startsWith("kind is 'score'"), e.getMessage());
	}
}
