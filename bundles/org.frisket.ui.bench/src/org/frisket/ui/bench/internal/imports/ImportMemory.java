package org.frisket.ui.bench.internal.imports;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.frisket.geometry.options.Option;
import org.frisket.imports.Importer;
import org.frisket.imports.Importers;
import org.frisket.imports.job.ArtRules;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.ui.bench.internal.files.BenchPreferences;
import org.frisket.ui.bench.internal.options.OptionMemory;

/** What was set when something was taken in last. */
final class ImportMemory {

	/** What the rules are remembered under, among the ids of importers. */
	static final String RULES = "rules"; //$NON-NLS-1$

	private static final String NODE = "import"; //$NON-NLS-1$

	private ImportMemory() {
	}

	static OptionMemory options() {
		return new OptionMemory(InstanceScope.INSTANCE.getNode(BenchPreferences.NODE).node(NODE));
	}

	/** For the importer of a file. */
	static Map<String, String> ofImporter(Path file) {
		Map<String, String> values = new LinkedHashMap<>();
		Importers.forFile(file.toString()).ifPresent(importer -> add(importer, values));
		return values;
	}

	private static void add(Contribution<Importer> importer, Map<String, String> values) {
		try {
			for (Option option : importer.create().options()) {
				values.put(option.name(), options().value(importer.id(), option));
			}
		} catch (ContributionException e) {
			// whoever reads the file says so
			ILog.of(ImportMemory.class).warn(e.getMessage(), e);
		}
	}

	static Map<String, String> ofRules() {
		Map<String, String> values = new LinkedHashMap<>();
		ArtRules.options().forEach(option -> values.put(option.name(), options().value(RULES, option)));
		return values;
	}
}
