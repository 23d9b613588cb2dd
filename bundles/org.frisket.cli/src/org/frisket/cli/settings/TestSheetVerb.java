package org.frisket.cli.settings;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbOptions;
import org.frisket.cli.work.Preparation;
import org.frisket.cli.work.Targets;
import org.frisket.geometry.Tolerance;
import org.frisket.material.advice.RulesOfThumb;
import org.frisket.material.advice.SettingsAdvisor;
import org.frisket.material.advice.Work;
import org.frisket.material.desk.Numbering;
import org.frisket.material.tools.Edge;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.CellPlace;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Sweep;
import org.frisket.material.trials.TestSheet;
import org.frisket.material.trials.TestSheetJob;
import org.frisket.model.Job;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A grid of trials as a job. */
@Command(name = "test-sheet", description = "Makes a sheet of test cuts over two settings; writes its id and what each cell is cut with.", sortOptions = false)
final class TestSheetVerb implements Callable<Integer> {

	@Mixin
	private WorkOptions work;

	@Option(names = "--across", required = true, paramLabel = "SWEEP", description = "What changes from column to column, such as pressure=10..30/5 (in steps of 5) or passes=1,2,3.")
	private String across;

	@Option(names = "--down", required = true, paramLabel = "SWEEP", description = "What changes from row to row.")
	private String down;

	@Option(names = "--size", paramLabel = "LENGTH", defaultValue = "10mm", converter = Conversions.PositiveLength.class, description = "Side of the square of each trial, from 5mm to 40mm (default ${DEFAULT-VALUE}).")
	private double size;
	@Option(names = "--out", required = true, paramLabel = "FILE", description = "What to write, by its ending: .frjob or a format of frisket export; may be given several times.")
	private List<Path> outputs = List.of();

	@Option(names = "--day", paramLabel = "DATE", description = "The day on it, such as 2031-05-17 (default today).")
	private LocalDate day;

	@Mixin
	private VerbOptions verb = new VerbOptions();

	private record Made(TestSheet sheet, Machine machine) {
	}

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		work.stock();
		Targets targets = Targets.of(outputs);
		PrintWriter err = verb.err();
		Made made = SettingsDesk.change(settings -> {
			Machine machine = work.machine(settings);
			Tool tool = work.tool(settings);
			Work todo = new Work(work.stock(), machine, tool, work.operation());
			Settings base = new SettingsAdvisor(settings.trials(), RulesOfThumb.of(settings.rules())).advise(todo)
					.settings();
			String id = Numbering.next("sheet", settings.sheets().stream().map(TestSheet::id).toList());
			TestSheet sheet = new TestSheet(id, day == null ? LocalDate.now() : day, todo.stock(), todo.setup(), base,
					Sweep.parse(across), Sweep.parse(down), tool.edge().map(Edge::share).orElse(0.0), new TreeMap<>());
			Job job = TestSheetJob.of(sheet, machine, size);
			settings.save(sheet);
			// written before the sheet is kept for good: if the file cannot be, there is no sheet either
			targets.write(job, Preparation.of(job, Tolerance.DEFAULT).prepared(), Map.of(), err);
			return new Made(sheet, machine);
		});
		PrintWriter out = verb.out();
		out.println(made.sheet().id());
		for (CellPlace place : made.sheet().places()) {
			out.println(place + ": " + SettingsText.line(made.sheet().settings(place), made.machine()));
		}
		return Status.DONE;
	}
}
