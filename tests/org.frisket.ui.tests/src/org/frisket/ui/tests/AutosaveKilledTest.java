package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.testkit.OwnProcess;
import org.frisket.ui.bench.internal.files.Autosave;
import org.frisket.ui.bench.internal.files.RecoveryStore;
import org.frisket.ui.bench.internal.files.Unsaved;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A workbench that is killed while its jobs are autosaved: what it said was autosaved, or what came after it, is there, and
 * never by half. {@code FRISKET_KILLS} says how often it is killed.
 */
class AutosaveKilledTest {

	private static final int FEW = 5;

	private Path home;

	@BeforeEach
	void makeFolder() throws IOException {
		home = Files.createTempDirectory("frisket-autosave");
	}

	@AfterEach
	void removeFolder() throws IOException {
		try (Stream<Path> files = Files.walk(home)) {
			for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(file);
			}
		}
	}

	@Test
	void lastAutosaveIsThereWholeWheneverTheWorkbenchIsKilled() throws Exception {
		Path copies = home.resolve("unsaved");
		int kills = Integer.parseInt(System.getenv().getOrDefault("FRISKET_KILLS", Integer.toString(FEW)));
		Random random = new Random(13);
		long edit = 1;
		for (int kill = 0; kill < kills; kill++) {
			long[] told = runAndKill(copies, edit, 2 + random.nextInt(6), random.nextInt(40));
			RecoveryStore store = new RecoveryStore(copies);
			for (int i = 0; i < told.length; i++) {
				Unsaved unsaved = Autosaver.JOBS.get(i);
				assertTrue(store.all().contains(unsaved), "the copy of " + unsaved + " is known");
				long there = there(store.read(unsaved).orElseThrow());
				// one more may be there that the program had no time to tell of
				assertTrue(there == told[i] || there == told[i] + 1, "told " + told[i] + ", there " + there);
				assertArrayEquals(Autosaver.base(unsaved), store.base(unsaved));
				edit = Math.max(edit, there + 1);
			}
			assertTrue(names(copies).stream().noneMatch(name -> name.endsWith(".damaged")), names(copies).toString());
		}
	}

	/** Which edit a copy is of, all of which is in it. */
	private static long there(Job copy) {
		String[] words = copy.getNotes().split(" ");
		long edit = Long.parseLong(words[0]);
		assertEquals(1 + Autosaver.words(edit), words.length);
		assertEquals("Ferry banner", copy.getTitle());
		return edit;
	}

	private static List<String> names(Path folder) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.map(file -> file.getFileName().toString()).sorted().toList();
		}
	}

	/** @return the edits of both jobs of which it told last */
	private static long[] runAndKill(Path copies, long edit, int after, int pauseMs) throws Exception {
		List<Class<?>> needed = List.of(Autosave.class, org.eclipse.core.runtime.jobs.Job.class, Job.class, EList.class,
				EObject.class, Job.class.getClassLoader().loadClass("org.eclipse.emf.ecore.xmi.XMLResource"), NLS.class,
				RegistryFactory.class, CoreException.class);
		Process bench = OwnProcess.of(Autosaver.class, needed, copies.toString(), Long.toString(edit)).start();
		long[] told = new long[Autosaver.JOBS.size()];
		try (BufferedReader out = new BufferedReader(new InputStreamReader(bench.getInputStream()))) {
			for (int i = 0; i < after; i++) {
				assertTrue(tell(out.readLine(), told), "the program ended by itself");
			}
			// into the middle of a copy
			Thread.sleep(pauseMs);
			// the process itself would close the pipe
			bench.toHandle().destroyForcibly();
			bench.waitFor();
			while (tell(out.readLine(), told)) {
				// what was left in the pipe
			}
		}
		return told;
	}

	/** Answers false for the end, and for a line that was cut off. */
	private static boolean tell(String line, long[] told) {
		if (line == null || !line.matches("\\d \\d+")) {
			return false;
		}
		String[] words = line.split(" ");
		told[Integer.parseInt(words[0])] = Long.parseLong(words[1]);
		return true;
	}
}
