package org.frisket.orders;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.h2.jdbcx.JdbcDataSource;

/** Another program, as at another desk, that has the order book. */
final class OtherProgram {

	private OtherProgram() {
	}

	/** @param main a class of these tests. What it writes to the error stream is seen at once. */
	static ProcessBuilder of(Class<?> main, String... arguments) throws IOException {
		List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
				"-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx256m", "-cp", classPath(main), main.getName()));
		command.addAll(List.of(arguments));
		return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
	}

	/** Where the classes are that the program needs. */
	private static String classPath(Class<?> main) throws IOException {
		Set<String> places = new LinkedHashSet<>();
		try {
			List<Class<?>> needed = new ArrayList<>(List.of(OrderBook.class, main, StudioFolder.class, Job.class, EList.class,
					EObject.class, XMLResource.class, NLS.class, RegistryFactory.class, CoreException.class,
					JdbcDataSource.class, Databases.class.getClassLoader().loadClass("org.postgresql.Driver")));
			for (Class<?> each : needed) {
				URI place = each.getProtectionDomain().getCodeSource().getLocation().toURI();
				Path path = Path.of(place);
				places.add(path.toString());
				// as compiled, not yet packed
				for (String classes : List.of("target/classes", "bin")) {
					if (Files.isDirectory(path.resolve(classes))) {
						places.add(path.resolve(classes).toString());
					}
				}
			}
		} catch (ClassNotFoundException | URISyntaxException e) {
			throw new IOException(e);
		}
		return String.join(File.pathSeparator, places);
	}
}
