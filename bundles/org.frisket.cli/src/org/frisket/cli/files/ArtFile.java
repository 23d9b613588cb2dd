package org.frisket.cli.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.cli.line.Refusal;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportTask;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.Importer;
import org.frisket.imports.Importers;
import org.frisket.imports.UnreadableArtException;
import org.frisket.imports.job.ArtRules;
import org.frisket.imports.job.ArtTaker;
import org.frisket.imports.job.TakenArt;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;

/**
 * A file of artwork, the importer for it, and what was set.
 *
 * @param own    options of the importer
 * @param others options that are not its own
 */
public record ArtFile(Path file, Contribution<Importer> importer, Map<String, String> own, Map<String, String> others) {

	/** @throws Refusal if no importer is known for such a file, or it cannot be used */
	public static ArtFile of(Path file, Map<String, String> options) throws Refusal {
		Contribution<Importer> importer = Importers.forFile(file.toString()).orElseThrow(
				() -> new Refusal("no format is known for “" + file + "”; there are " + endings()));
		try {
			List<String> known = importer.create().options().stream().map(Option::name).toList();
			Map<String, String> own = new LinkedHashMap<>(options);
			own.keySet().retainAll(known);
			Map<String, String> others = new LinkedHashMap<>(options);
			others.keySet().removeAll(known);
			return new ArtFile(file, importer, own, others);
		} catch (ContributionException | RuntimeException e) {
			throw new Refusal(e);
		}
	}

	private static String endings() {
		return String.join(", ", Importers.all().stream().flatMap(each -> Importers.endings(each).stream())
				.map(ending -> "." + ending).toList());
	}

	public ImportedArt read() throws Refusal {
		try {
			return new ImportTask(importer).read(ImportSource.of(file), own, Monitor.NONE);
		} catch (IOException | UnreadableArtException | ContributionException | IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	/** As a job, titled after the file; what is not set of the importer is set of the rules. */
	public TakenArt take(Tolerance tolerance) throws Refusal {
		try {
			ArtRules rules = ArtRules.of(others);
			return new ArtTaker(rules, tolerance).take(title(file), read(), Monitor.NONE);
		} catch (ContributionException | IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	/** The name of a file without its ending. */
	public static String title(Path file) {
		String name = file.getFileName().toString();
		int dot = name.lastIndexOf('.');
		return dot > 0 ? name.substring(0, dot) : name;
	}
}
