package org.frisket.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.studio.StudioFolder;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program that is killed while it saves: what it was told is kept, is kept, and nothing is there by half.
 * {@code FRISKET_KILLS} says how often it is killed.
 */
class KilledTest {

	private static final int FEW = 4;

	@TempDir
	Path home;

	@Test
	void whatWasKeptIsThereWheneverTheProgramIsKilled() throws Exception {
		StudioFolder studio = new StudioFolder(home.resolve("studio"));
		OrderBook book = new OrderBook(studio);
		long number = book.add(new NewOrder("Banner", "Brindle Sound Ferries", Optional.empty(), 1, ""), "Ottoline").number();
		int kills = Integer.parseInt(System.getenv().getOrDefault("FRISKET_KILLS", Integer.toString(FEW)));
		Random random = new Random(31);
		long saved = 1;
		for (int kill = 0; kill < kills; kill++) {
			long told = runAndKill(studio, number, 1 + random.nextInt(3), random.nextInt(30));
			StoredJob job = book.open(number);
			long there = job.entry().revision();
			// one more may have been kept that the program had no time to tell of
			assertTrue(there == told || there == told + 1, "told " + told + ", there " + there);
			assertTrue(there > saved, "nothing was saved");
			assertEquals(Long.toString(there), job.job().getNotes().split(" ")[0]);
			assertEquals(20_001, job.job().getNotes().split(" ").length);
			saved = there;
		}
	}

	/** @return the revision it told of last */
	private static long runAndKill(StudioFolder studio, long number, int after, int pauseMs) throws Exception {
		Process saver = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
				"-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx256m", "-cp", classPath(), Saver.class.getName(),
				studio.path().toString(), Long.toString(number)).redirectError(ProcessBuilder.Redirect.INHERIT).start();
		long told = 0;
		try (BufferedReader out = new BufferedReader(new InputStreamReader(saver.getInputStream()))) {
			for (int i = 0; i < after; i++) {
				String line = out.readLine();
				assertTrue(line != null, "the program ended by itself");
				told = Long.parseLong(line);
			}
			// into the middle of a save
			Thread.sleep(pauseMs);
			// the process itself would close the pipe
			saver.toHandle().destroyForcibly();
			saver.waitFor();
			for (String line = rest(out); line != null; line = rest(out)) {
				told = Long.parseLong(line);
			}
		}
		return told;
	}

	/** What is left in the pipe; a line that was cut off is none. */
	private static String rest(BufferedReader out) throws IOException {
		String line = out.readLine();
		return line == null || !line.matches("\\d+") ? null : line;
	}

	/** Where the classes are that the program needs. */
	private static String classPath() throws Exception {
		Set<String> places = new LinkedHashSet<>();
		List<Class<?>> needed = new ArrayList<>(List.of(OrderBook.class, Saver.class, StudioFolder.class, Job.class, EList.class,
				EObject.class, XMLResource.class, NLS.class, RegistryFactory.class, CoreException.class, JdbcDataSource.class));
		for (Class<?> each : needed) {
			URI place = each.getProtectionDomain().getCodeSource().getLocation().toURI();
			Path path = Path.of(place);
			places.add(path.toString());
			// as compiled, not yet packed
			for (String classes : List.of("target/classes", "bin")) {
				if (path.resolve(classes).toFile().isDirectory()) {
					places.add(path.resolve(classes).toString());
				}
			}
		}
		return String.join(File.pathSeparator, places);
	}
}
