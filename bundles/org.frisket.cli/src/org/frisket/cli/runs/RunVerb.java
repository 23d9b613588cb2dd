package org.frisket.cli.runs;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbOptions;
import org.frisket.cli.work.Preparation;
import org.frisket.cli.work.Report;
import org.frisket.cli.work.WholeFiles;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.material.tools.Machine;
import org.frisket.model.Job;
import org.frisket.model.WholeFile;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.run.Costing;
import org.frisket.run.Load;
import org.frisket.run.MachineRun;
import org.frisket.run.Rate;
import org.frisket.run.RunMaker;
import org.frisket.run.RunOptions;
import org.frisket.run.Workshop;
import org.frisket.run.paper.RunSheet;
import org.frisket.sheets.GuestFiles;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.LaidSheets;
import org.frisket.studio.Studio;
import org.frisket.toolpath.RunChoices;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** How the sheets of a job are run. */
@Command(name = "run", description = "Says how a job's sheets are run: tools and settings in their order, time, wear and cost. A job without sheets is run as it lies on the bench.", sortOptions = false)
public final class RunVerb implements Callable<Integer> {

	private static final String PDF = ".pdf";

	@Parameters(arity = "0..1", paramLabel = "FILE", description = "The job, a .frjob file; guests on its sheets are read from the files it names.")
	private Path file;

	@picocli.CommandLine.Option(names = "--sheet", paramLabel = "N", description = "Only this sheet, counted from 1 (default all).")
	private Integer sheet;

	@picocli.CommandLine.Option(names = "--machine", paramLabel = "ID", description = "One of the studio's machines (default that of its latest run, or its only one).")
	private String machine;

	@picocli.CommandLine.Option(names = "--set", paramLabel = "OPTION=VALUE", description = "How it is run; see --list.")
	private Map<String, String> values = Map.of();

	@picocli.CommandLine.Option(names = "--list", description = "Lists the options of a run instead.")
	private boolean list;

	@picocli.CommandLine.Option(names = "--rate", paramLabel = "PRICE", description = "What an hour of the machine costs, such as \"30.00 EUR\" (default the studio's preference " + Rate.KEY + ").")
	private String rate;

	@picocli.CommandLine.Option(names = "--keep-rate", description = "Makes --rate that of the studio.")
	private boolean keepRate;

	@picocli.CommandLine.Option(names = "--tolerance", paramLabel = "LENGTH", defaultValue = "0.02mm", description = "Greatest deviation of curves (default ${DEFAULT-VALUE}).")
	private Tolerance tolerance;

	@picocli.CommandLine.Option(names = "--json", description = "Writes JSON for machines.")
	private boolean json;

	@picocli.CommandLine.Option(names = "--out", paramLabel = "FILE.pdf", description = "Writes the run sheet to print; of several sheets, the number of each goes before the ending.")
	private Path output;

	@Mixin
	private VerbOptions verb = new VerbOptions();

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		Workshop workshop = workshop();
		List<Option> options = RunOptions.options(workshop);
		if (list) {
			options.forEach(option -> verb.out().printf("%s=%s: %s%s%n", option.name(), option.initial(), option.description(),
					option.choices().isEmpty() ? "" : " (" + String.join(", ", option.choices()) + ")"));
			return Status.DONE;
		}
		if (file == null) {
			throw new Refusal("say which job");
		}
		if (keepRate && rate == null) {
			throw new Refusal("--keep-rate: say which one with --rate");
		}
		if (output != null && !output.toString().toLowerCase(Locale.ROOT).endsWith(PDF)) {
			throw new Refusal("--out: a run sheet is a " + PDF + " file, not “" + output + "”");
		}
		try {
			OptionValues chosen = OptionValues.of(options, values);
			return run(RunOptions.workshop(workshop, chosen), RunOptions.choices(chosen));
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	private Workshop workshop() throws Refusal {
		try {
			DeskState desk = SettingsDesk.look(Studio.folder());
			if (machine == null) {
				return Workshop.of(desk);
			}
			Machine chosen = desk.machine(machine).orElseThrow(
					() -> new Refusal("--machine: the studio has no machine “" + machine + "”; see frisket settings machine list"));
			return new Workshop(chosen, desk);
		} catch (IOException e) {
			throw new Refusal(e);
		}
	}

	private Optional<Rate> rate() throws Refusal {
		try {
			return rate == null ? Rate.of(Studio.folder()) : Optional.of(Rate.parse(rate));
		} catch (IOException | IllegalArgumentException e) {
			throw new Refusal((rate == null ? Rate.KEY : "--rate") + ": " + e.getMessage());
		}
	}

	private static void keep(Rate rate) throws Refusal {
		try {
			Studio.folder().openForWriting().preferences().put(Rate.KEY, rate.toString());
		} catch (IOException e) {
			throw new Refusal("--keep-rate: " + e.getMessage());
		}
	}

	private int run(Workshop workshop, RunChoices choices) throws Refusal {
		Optional<Rate> hour = rate();
		Job job = Preparation.load(file);
		Preparation preparation = Preparation.of(job, tolerance);
		GuestFiles.Guests guests = GuestFiles.load(job, file.toAbsolutePath());
		List<SheetRun> runs = new ArrayList<>();
		if (job.getSheets().isEmpty()) {
			if (sheet != null) {
				throw new Refusal("--sheet: the job has no sheets; it is run as it lies on the bench");
			}
			runs.add(worked(0, Load.bench(preparation.prepared()), List.of(), workshop, choices, hour));
		} else {
			List<LaidSheet> laid = laid(job, preparation.prepared(), guests);
			for (int number : chosen(laid.size())) {
				LaidSheet each = laid.get(number - 1);
				runs.add(worked(number, Load.of(each), each.findings(), workshop, choices, hour));
			}
		}
		List<Path> written = write(runs);
		if (keepRate) {
			keep(hour.orElseThrow());
		}
		answer(runs, preparation, guests.problems(), hour);
		if (!json) {
			written.forEach(each -> verb.out().println("wrote " + each));
		}
		boolean blocked = preparation.status() == Status.BLOCKED || runs.stream().anyMatch(SheetRun::isBlocked);
		return blocked ? Status.BLOCKED : Status.DONE;
	}

	private List<LaidSheet> laid(Job job, PreparedJob prepared, GuestFiles.Guests guests) {
		Map<String, PreparedJob> all = guests.prepared(prepared, new JobPreparer(FontLibraries.installed()), tolerance,
				Monitor.NONE);
		return LaidSheets.of(job, all, tolerance, Monitor.NONE);
	}

	private List<Integer> chosen(int sheets) throws Refusal {
		if (sheet != null && (sheet < 1 || sheet > sheets)) {
			throw new Refusal("--sheet: there is no sheet " + sheet + "; the job has " + sheets);
		}
		List<Integer> numbers = new ArrayList<>();
		for (int number = 1; number <= sheets; number++) {
			if (sheet == null || sheet == number) {
				numbers.add(number);
			}
		}
		return numbers;
	}

	private static SheetRun worked(int number, Load load, List<Finding> laid, Workshop workshop,
			RunChoices choices, Optional<Rate> hour) {
		MachineRun run = RunMaker.of(load, workshop, choices, Monitor.NONE);
		return new SheetRun(number, load, run, Costing.of(run, load, workshop, hour), laid);
	}

	/** @return the files that were asked for */
	private List<Path> write(List<SheetRun> runs) throws Refusal {
		WholeFiles files = new WholeFiles();
		if (output != null) {
			runs.forEach(run -> files.add(runs.size() == 1 ? output : numbered(output, run.number()),
					file -> write(run, file)));
		}
		files.write();
		return files.targets();
	}

	private static void write(SheetRun run, Path file) throws IOException {
		try {
			WholeFile.write(out -> RunSheet.write(run.run(), run.load().content(), run.cost(), out), file);
		} catch (IOException e) {
			throw new IOException("cannot write " + file + ": " + WholeFile.reason(e), e);
		}
	}

	private static Path numbered(Path file, int number) {
		String name = file.getFileName().toString();
		return file.resolveSibling(name.substring(0, name.length() - PDF.length()) + '-' + number + name.substring(name.length() - PDF.length()));
	}

	private void answer(List<SheetRun> runs, Preparation preparation, List<String> problems, Optional<Rate> hour) {
		PrintWriter out = verb.out();
		if (json) {
			out.println(RunJson.text(runs, preparation.findings(), problems));
			return;
		}
		RunText text = new RunText(out, hour);
		for (SheetRun run : runs) {
			text.print(run);
		}
		text.problems(problems);
		new Report(out).findings(preparation.findings());
	}
}
