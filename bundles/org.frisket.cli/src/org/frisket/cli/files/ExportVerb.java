package org.frisket.cli.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;

import org.frisket.cli.line.OptionList;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbOptions;
import org.frisket.cli.work.OutputFolder;
import org.frisket.cli.work.Preparation;
import org.frisket.cli.work.Report;
import org.frisket.cli.work.Targets;
import org.frisket.export.drive.Drive;
import org.frisket.export.drive.Drives;
import org.frisket.export.plan.HandoffPlan;
import org.frisket.export.plan.HandoffReport;
import org.frisket.export.plan.HandoffRequest;
import org.frisket.export.plan.StudioWorkshop;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.sheets.GuestFiles;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A job as files of any format at hand: as it lies on the bench, or sheet by sheet. */
@Command(name = "export", description = "Writes a job in other formats: its sheets, or the bench where it has none.", sortOptions = false)
public final class ExportVerb implements Callable<Integer> {

	@Parameters(arity = "0..1", paramLabel = "FILE", description = "The job, a .frjob file.")
	private Path file;

	@Option(names = "--out", paramLabel = "FILE", description = "What to write, by its ending, or the folder for files of the format that --format or --preset names; may be given several times.")
	private List<Path> outputs = List.of();

	@Mixin
	private ExportOptions choices = new ExportOptions();

	@Option(names = "--list", description = "Lists the formats, their options, those of runs, the presets and the drives.")
	private boolean list;

	@Option(names = "--tolerance", paramLabel = "LENGTH", defaultValue = "0.02mm", description = "Greatest deviation of curves (default ${DEFAULT-VALUE}).")
	private Tolerance tolerance;

	@Mixin
	private VerbOptions verb = new VerbOptions();

	/** The options of formats are part of the help; they are looked up when it is asked for. */
	@Spec
	private void helpWithFormats(CommandSpec spec) {
		spec.usageMessage().sectionMap().put(UsageMessageSpec.SECTION_KEY_FOOTER, help -> OptionList.text(all -> {
			all.heading("Formats and their options, for --set:");
			all.exporters();
			all.heading("Options of a machine's run, for --run:");
			all.run();
		}));
	}

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		if (list) {
			listAll();
			return Status.DONE;
		}
		ExportOptions.Chosen chosen = choices.chosen(outputs);
		if (file == null || chosen.outputs().isEmpty()) {
			throw new Refusal("say which job and, with --out, which file");
		}
		Job job = Preparation.load(file);
		List<HandoffRequest> requests = new ArrayList<>();
		List<Path> copies = new ArrayList<>();
		for (Path output : chosen.outputs()) {
			if (output.toString().toLowerCase(Locale.ROOT).endsWith(JobFile.ENDING)) {
				copies.add(output);
			} else {
				requests.add(chosen.request(output, job));
			}
		}
		choices.checkPreset(requests);
		Preparation preparation = Preparation.of(job, tolerance);
		List<HandoffPlan> plans = plans(requests, withGuests(job, preparation.prepared()), job, chosen.workshop());
		List<Finding> findings = new ArrayList<>(preparation.findings());
		plans.forEach(plan -> findings.addAll(plan.findings()));
		makePlaces(requests, copies);
		Targets.of(copies).write(job, preparation.prepared(), Map.of(), verb.err());
		List<Path> written = new ArrayList<>(copies);
		List<HandoffReport.Outcome> failed = new ArrayList<>();
		for (HandoffPlan plan : plans) {
			HandoffReport report = write(plan);
			written.addAll(report.written());
			failed.addAll(report.failed());
		}
		Report report = new Report(verb.out());
		report.summary(preparation.prepared(), written);
		report.findings(findings);
		settle(written);
		refuse(written.size(), failed);
		choices.savePreset(chosen, requests);
		return findings.stream().anyMatch(Finding::isBlocking) ? Status.BLOCKED : Status.DONE;
	}

	private void listAll() {
		OptionList all = new OptionList(verb.out());
		all.exporters();
		all.heading("options of a machine's run");
		all.run();
		all.heading("presets");
		choices.presets(verb.err()::println).all().forEach(preset -> verb.out().println("    " + ExportOptions.line(preset)));
		all.heading("drives");
		Drives.ofThisComputer().mounted()
				.forEach(drive -> verb.out().println("    " + drive.name() + ": " + drive.folder()
						+ (drive.writable() ? "" : " (write-protected)")));
	}

	/** The job and those whose parts lie on its sheets too. */
	private Map<String, PreparedJob> withGuests(Job job, PreparedJob prepared) {
		GuestFiles.Guests guests = GuestFiles.load(job, file.toAbsolutePath());
		guests.problems().forEach(verb.err()::println);
		return guests.prepared(prepared, new JobPreparer(FontLibraries.installed()), tolerance, Monitor.NONE);
	}

	/** All before the first file is written, so that what does not go together leaves nothing behind. */
	private List<HandoffPlan> plans(List<HandoffRequest> requests, Map<String, PreparedJob> jobs, Job job,
			StudioWorkshop workshop) throws Refusal {
		List<HandoffPlan> plans = new ArrayList<>();
		for (HandoffRequest request : requests) {
			try {
				plans.add(HandoffPlan.of(request, job, jobs, workshop, tolerance, Monitor.NONE));
			} catch (IOException | IllegalArgumentException e) {
				throw new Refusal(e);
			}
		}
		return plans;
	}

	private static void makePlaces(List<HandoffRequest> requests, List<Path> copies) throws Refusal {
		for (Path copy : copies) {
			OutputFolder.requirePlace(copy);
		}
		for (HandoffRequest request : requests) {
			if (!request.destination().isFolder()) {
				OutputFolder.requirePlace(request.destination().path());
			}
		}
		for (HandoffRequest request : requests) {
			if (request.destination().isFolder()) {
				OutputFolder.make(request.destination().path());
			}
		}
	}

	private static HandoffReport write(HandoffPlan plan) throws Refusal {
		try {
			return plan.write(Monitor.NONE);
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	private void settle(List<Path> written) throws Refusal {
		for (Drive drive : Drives.ofThisComputer().mounted()) {
			List<Path> there = written.stream().filter(drive::holds).toList();
			if (!there.isEmpty()) {
				try {
					drive.settle(there);
				} catch (IOException e) {
					throw new Refusal(e);
				}
				verb.out().println("the drive " + drive.name() + " may be pulled: all files are on it");
			}
		}
	}

	private void refuse(int written, List<HandoffReport.Outcome> failed) throws Refusal {
		if (failed.size() + written > 1) {
			failed.stream().skip(1).forEach(outcome -> verb.err().println(outcome.trouble().orElse("")));
		}
		if (!failed.isEmpty()) {
			throw new Refusal(failed.get(0).trouble().orElse("") + (failed.size() + written == 1 ? ""
					: " (%d of %d files were written)".formatted(written, failed.size() + written)));
		}
	}
}
