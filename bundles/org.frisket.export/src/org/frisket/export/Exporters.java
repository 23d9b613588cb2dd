package org.frisket.export;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ExtensionPoint;

/** The formats at hand, built in or brought by a studio's own bundle. */
public final class Exporters {

	private static final ExtensionPoint<Exporter> POINT = new ExtensionPoint<>("org.frisket.export.exporters",
			Exporter.class);

	private Exporters() {
	}

	/** All of them, by id; no exporter is loaded for this. */
	public static List<Contribution<Exporter>> all() {
		return POINT.contributions();
	}

	/** What a format is called. */
	public static String name(Contribution<Exporter> exporter) {
		return exporter.attribute("name").orElse(exporter.id());
	}

	/** The ending of its files, without the dot, in lower case. */
	public static String ending(Contribution<Exporter> exporter) {
		return exporter.attribute("ending").orElse("").toLowerCase(Locale.ROOT);
	}

	/** Whether its files are for one machine, so that it is to be said for which. */
	public static boolean isForMachine(Contribution<Exporter> exporter) {
		return exporter.attribute("machine").map(Boolean::parseBoolean).orElse(false);
	}

	/** The exporter for a file of this name, by its ending; the first by id if several serve it. */
	public static Optional<Contribution<Exporter>> forFile(String fileName) {
		String name = fileName.toLowerCase(Locale.ROOT);
		return all().stream().filter(exporter -> name.endsWith("." + ending(exporter))).findFirst();
	}
}
