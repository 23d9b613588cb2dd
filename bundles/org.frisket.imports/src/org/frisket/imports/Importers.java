package org.frisket.imports;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ExtensionPoint;

/** The formats that can be read, built in or brought by a studio's own bundle. */
public final class Importers {

	private static final ExtensionPoint<Importer> POINT = new ExtensionPoint<>("org.frisket.imports.importers",
			Importer.class);

	private Importers() {
	}

	/** All of them, by id; no importer is loaded for this. */
	public static List<Contribution<Importer>> all() {
		return POINT.contributions();
	}

	/** What a format is called. */
	public static String name(Contribution<Importer> importer) {
		return importer.attribute("name").orElse(importer.id());
	}

	/** The endings of its files, without the dot, in lower case. */
	public static List<String> endings(Contribution<Importer> importer) {
		return Arrays.stream(importer.attribute("endings").orElse("").toLowerCase(Locale.ROOT).split("\\s+"))
				.filter(ending -> !ending.isEmpty()).toList();
	}

	/** The importer for a file of this name, by its ending; the first by id if several serve it. */
	public static Optional<Contribution<Importer>> forFile(String fileName) {
		String name = fileName.toLowerCase(Locale.ROOT);
		return all().stream().filter(importer -> endings(importer).stream().anyMatch(end -> name.endsWith("." + end)))
				.findFirst();
	}
}
