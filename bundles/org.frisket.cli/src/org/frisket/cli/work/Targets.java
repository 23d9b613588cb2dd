package org.frisket.cli.work;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.frisket.cli.line.Refusal;
import org.frisket.export.ExportTask;
import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.fonts.JobFonts;
import org.frisket.prepare.pictures.LinkedPictures;
import org.frisket.studio.Studio;

/** The files that were asked for, each with the exporter for it; no exporter means the job itself. */
public final class Targets {

	private static final String JOB_ENDING = ".frjob";

	private final Map<Path, Optional<Contribution<Exporter>>> targets;

	private Targets(Map<Path, Optional<Contribution<Exporter>>> targets) {
		this.targets = targets;
	}

	/** Looks the formats up before anything is computed. */
	public static Targets of(List<Path> files) throws Refusal {
		Map<Path, Optional<Contribution<Exporter>>> targets = new LinkedHashMap<>();
		for (Path file : files) {
			String name = file.getFileName() == null ? "" : file.getFileName().toString();
			if (name.toLowerCase(Locale.ROOT).endsWith(JOB_ENDING)) {
				targets.put(file, Optional.empty());
				continue;
			}
			targets.put(file, Optional.of(exporter(file)));
		}
		return new Targets(targets);
	}

	/** The exporter for a file, by its ending. */
	public static Contribution<Exporter> exporter(Path file) throws Refusal {
		String name = file.getFileName() == null ? "" : file.getFileName().toString();
		return Exporters.forFile(name)
				.orElseThrow(() -> new Refusal("--out: no format for “" + file + "”; there are " + endings()));
	}

	private static String endings() {
		return JOB_ENDING + Exporters.all().stream().map(exporter -> ", ." + Exporters.ending(exporter))
				.collect(Collectors.joining());
	}

	/**
	 * @param options of the exporters, as texts
	 * @param notes   for what went wrong without keeping anything from being written
	 */
	public void write(Job job, PreparedJob prepared, Map<String, String> options, PrintWriter notes) throws Refusal {
		WholeFiles files = new WholeFiles();
		addTo(files, job, prepared, options);
		files.write();
		keepFonts(job, notes);
	}

	/** Adds them to what is written together; fonts are kept by {@link #keepFonts}. */
	public void addTo(WholeFiles files, Job job, PreparedJob prepared, Map<String, String> options) {
		targets.forEach((target, exporter) -> files.add(target, exporter.<WholeFiles.Maker>map(
				each -> file -> new ExportTask(each).write(Handoff.of(prepared), options, Monitor.NONE, file))
				// links of a job lead from where it is for, wherever it is made
				.orElse(file -> JobFile.save(LinkedPictures.at(job, target), file))));
	}

	/** Keeps the fonts of a job that was written, so that a reorder is set in them. */
	public void keepFonts(Job job, PrintWriter notes) {
		if (targets.values().stream().anyMatch(Optional::isEmpty)) {
			tellNotKept(job, notes);
		}
	}

	private static void tellNotKept(Job job, PrintWriter notes) {
		for (JobFonts.NotKept each : JobFonts.keep(job, FontLibraries.installed(), Studio.folder()).failed()) {
			notes.println("The font %s was not kept for reorders in %s: %s".formatted(each.font(), each.folder(),
					each.reason()));
		}
	}
}
