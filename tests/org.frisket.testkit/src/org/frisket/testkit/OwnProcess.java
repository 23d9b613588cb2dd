package org.frisket.testkit;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A class of tests as a program of its own, which can be killed. */
public final class OwnProcess {

	private OwnProcess() {
	}

	/**
	 * What it writes to the error stream is seen at once.
	 *
	 * @param main   with a main method
	 * @param needed one class of each bundle that the program needs
	 */
	public static ProcessBuilder of(Class<?> main, List<Class<?>> needed, String... arguments) throws IOException {
		List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
				"-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx256m", "-cp", classPath(main, needed), main.getName()));
		command.addAll(List.of(arguments));
		return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
	}

	/** Where the classes are that the program needs. */
	private static String classPath(Class<?> main, List<Class<?>> needed) throws IOException {
		Set<String> places = new LinkedHashSet<>();
		List<Class<?>> all = new ArrayList<>(needed);
		all.add(main);
		try {
			for (Class<?> each : all) {
				Path path = Path.of(each.getProtectionDomain().getCodeSource().getLocation().toURI());
				places.add(path.toString());
				// as compiled, not yet packed
				for (String classes : List.of("target/classes", "bin")) {
					if (Files.isDirectory(path.resolve(classes))) {
						places.add(path.resolve(classes).toString());
					}
				}
			}
		} catch (URISyntaxException e) {
			throw new IOException(e);
		}
		return String.join(File.pathSeparator, places);
	}
}
