package org.frisket.cli.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.work.Targets;
import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.export.drive.Drive;
import org.frisket.export.drive.Drives;
import org.frisket.export.names.NamePattern;
import org.frisket.export.plan.Destination;
import org.frisket.export.plan.HandoffRequest;
import org.frisket.export.plan.SheetChoice;
import org.frisket.export.plan.StudioWorkshop;
import org.frisket.export.preset.Preset;
import org.frisket.export.preset.Presets;
import org.frisket.model.Job;
import org.frisket.prepare.extension.Contribution;
import org.frisket.studio.Studio;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** What of a job is handed out, in what format, to where, and how it is named. */
final class ExportOptions {

	/** One or the other. */
	private static final class What {

		@Option(names = "--sheet", paramLabel = "N", description = "Only these sheets, such as 2, or 1,3-5 (default all).")
		private String sheets;

		@Option(names = "--bench", description = "The job as it lies on the bench, even if it has sheets.")
		private boolean bench;
	}

	@ArgGroup(exclusive = true)
	private What what;

	@Option(names = "--format", paramLabel = "ENDING", description = "The format of files in a folder, by its ending or id.")
	private String format;

	@Option(names = "--name", paramLabel = "PATTERN", description = "How files in a folder are named (default " + NamePattern.USUAL + "); fields are job, title, number, customer, sheet, sheets, stock, colour, machine, due and format.")
	private String names;

	@Option(names = "--drive", paramLabel = "NAME", description = "The removable drive to write to, in place of --out; see --list.")
	private String drive;

	@Option(names = "--set", paramLabel = "OPTION=VALUE", description = "An option of the format; see below.")
	private Map<String, String> options = Map.of();

	@Option(names = "--machine", paramLabel = "ID", description = "The machine that is to run it (default that of the latest run, else the only one).")
	private String machine;

	@Option(names = "--run", paramLabel = "OPTION=VALUE", description = "An option of the machine's run; see below.")
	private Map<String, String> run = Map.of();

	@Option(names = "--preset", paramLabel = "NAME", description = "Begins with what was saved by this name; whatever else is said prevails.")
	private String preset;

	@Option(names = "--save-preset", paramLabel = "NAME", description = "Saves format, options, names and folder by this name.")
	private String saved;

	/**
	 * What is meant after all, the preset counted in.
	 *
	 * @param outputs files and folders
	 * @param format  for folders; null if none was named
	 */
	record Chosen(SheetChoice sheets, List<Path> outputs, Contribution<Exporter> format, Map<String, String> options,
			Map<String, String> run, String names, StudioWorkshop workshop) {

		HandoffRequest request(Path output, Job job) throws Refusal {
			try {
				HandoffRequest request = new HandoffRequest(sheets, exporter(output), options, destination(output), run);
				// what does not go together is said before the job is worked through
				if (!names.contains("{machine}")) {
					request.targets(job, "");
				}
				return request;
			} catch (IllegalArgumentException e) {
				throw new Refusal(e.getMessage() + (isManyIntoOne(output, job)
						? " Say --out DIR --format " + ending(output) + ", --sheet N, or --bench for the job as it lies." : ""));
			}
		}

		private boolean isManyIntoOne(Path output, Job job) {
			return sheets.equals(SheetChoice.ALL) && job.getSheets().size() > 1 && !Files.isDirectory(output)
					&& !isNewFolder(output);
		}

		private String ending(Path output) throws Refusal {
			return Exporters.ending(exporter(output));
		}

		private Contribution<Exporter> exporter(Path output) throws Refusal {
			if (format != null) {
				return format;
			}
			if (Files.isDirectory(output)) {
				throw new Refusal("--out: “" + output + "” is a folder; say with --format what is to be written into it");
			}
			return Targets.exporter(output);
		}

		/** What is not there yet and does not look like a file. */
		private static boolean isNewFolder(Path output) {
			return !Files.exists(output) && output.getFileName() != null && output.getFileName().toString().indexOf('.') < 0;
		}

		private Destination destination(Path output) throws Refusal {
			if (Files.isDirectory(output) || format != null && isNewFolder(output)) {
				return Destination.folder(output, NamePattern.parse(names));
			}
			String ending = "." + ending(output);
			if (!output.toString().toLowerCase(Locale.ROOT).endsWith(ending)) {
				throw new Refusal("--out: there is no folder “" + output + "”, and a file of this format ends in " + ending);
			}
			return Destination.file(output);
		}
	}

	Chosen chosen(List<Path> outputs) throws Refusal {
		Optional<Preset> base = preset == null ? Optional.empty() : Optional.of(named(preset));
		Map<String, String> set = new LinkedHashMap<>();
		Map<String, String> runSet = new LinkedHashMap<>();
		base.ifPresent(known -> {
			// options of another format than the one it was saved for mean nothing
			if (format == null) {
				set.putAll(known.options());
			}
			runSet.putAll(known.run());
		});
		set.putAll(options);
		runSet.putAll(run);
		String kind = format != null ? format : base.map(Preset::format).orElse(null);
		String pattern = names != null ? names
				: base.map(Preset::names).filter(text -> !text.isEmpty()).orElse(NamePattern.USUAL);
		return new Chosen(sheets(), places(outputs, base), kind == null ? null : exporter(kind), set, runSet, pattern,
				workshop(machine != null ? machine : base.map(Preset::machine).orElse("")));
	}

	private SheetChoice sheets() {
		return what == null ? SheetChoice.ALL : what.bench ? SheetChoice.BENCH : SheetChoice.of(what.sheets);
	}

	private List<Path> places(List<Path> outputs, Optional<Preset> base) throws Refusal {
		if (drive != null) {
			if (!outputs.isEmpty()) {
				throw new Refusal("--drive: it takes the place of --out");
			}
			return List.of(mounted().folder());
		}
		if (outputs.isEmpty() && base.isPresent() && !base.get().folder().isEmpty()) {
			Path folder = Path.of(base.get().folder());
			if (!Files.isDirectory(folder)) {
				throw new Refusal("--preset: there is no folder “" + folder + "”; name another with --out");
			}
			return List.of(folder);
		}
		return outputs;
	}

	private Drive mounted() throws Refusal {
		List<Drive> all = Drives.ofThisComputer().mounted();
		return all.stream().filter(each -> each.name().equals(drive)).findFirst().orElseThrow(() -> new Refusal(
				"--drive: there is no drive “" + drive + "”; there are " + (all.isEmpty() ? "none"
						: all.stream().map(Drive::name).collect(Collectors.joining(", ")))));
	}

	private static Contribution<Exporter> exporter(String named) throws Refusal {
		String ending = named.startsWith(".") ? named.substring(1) : named;
		return Exporters.all().stream().filter(each -> each.id().equals(named)).findFirst()
				.or(() -> Exporters.forFile("." + ending))
				.orElseThrow(() -> new Refusal("--format: there is no format “" + named + "”; there are "
						+ Exporters.all().stream().map(Exporters::ending).distinct().collect(Collectors.joining(", "))));
	}

	private static StudioWorkshop workshop(String machine) throws Refusal {
		StudioWorkshop workshop = new StudioWorkshop(Studio.folder(), machine);
		if (!machine.isEmpty()) {
			try {
				workshop.get();
			} catch (IOException | IllegalArgumentException e) {
				throw new Refusal("--machine: " + e.getMessage());
			}
		}
		return workshop;
	}

	/** @param problems told what could not be read */
	Presets presets(Consumer<String> problems) {
		Presets presets = Presets.in(Studio.folder().presets());
		presets.problems().forEach(problems);
		return presets;
	}

	private Preset named(String name) throws Refusal {
		Presets presets = Presets.in(Studio.folder().presets());
		return presets.find(name)
				.orElseThrow(() -> new Refusal("--preset: there is no preset “" + name + "”; there are "
						+ (presets.all().isEmpty() ? "none" : presets.all().stream().map(Preset::name).collect(Collectors.joining(", ")))
						+ presets.problems().stream().map(problem -> ". " + problem).collect(Collectors.joining())));
	}

	/** Before anything is written. */
	void checkPreset(List<HandoffRequest> requests) throws Refusal {
		if (saved != null && requests.size() != 1) {
			throw new Refusal("--save-preset: a preset is of one format; the command writes " + requests.size());
		}
	}

	/** Once the files are written: what does not work is not kept. */
	void savePreset(Chosen chosen, List<HandoffRequest> requests) throws Refusal {
		if (saved == null) {
			return;
		}
		HandoffRequest request = requests.get(0);
		Path place = request.destination().path().toAbsolutePath().normalize();
		try {
			Presets.in(Studio.folder().open().presets()).save(new Preset(saved, request.format().id(), chosen.options(),
					chosen.run(), machine == null ? "" : machine, chosen.names(),
					request.destination().isFolder() ? place.toString() : ""));
		} catch (IOException | IllegalArgumentException e) {
			throw new Refusal("--save-preset: " + e.getMessage());
		}
	}

	/** A preset in one line. */
	static String line(Preset preset) {
		StringBuilder line = new StringBuilder(preset.name()).append(": ").append(preset.format());
		preset.options().forEach((option, value) -> line.append(' ').append(option).append('=').append(value));
		preset.run().forEach((option, value) -> line.append(" run ").append(option).append('=').append(value));
		return line.append(preset.machine().isEmpty() ? "" : ", machine " + preset.machine())
				.append(preset.names().isEmpty() ? "" : ", " + preset.names())
				.append(preset.folder().isEmpty() ? "" : ", into " + preset.folder()).toString();
	}
}
