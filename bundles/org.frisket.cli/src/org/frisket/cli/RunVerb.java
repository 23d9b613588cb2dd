package org.frisket.cli;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.frisket.geometry.Length;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.BladeWear;
import org.frisket.material.trials.Reorder;
import org.frisket.material.trials.Run;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs of jobs, and what worked before. */
@Command(name = "run", description = "Keeps what jobs were run with, and proposes what worked.", subcommands = {
		RunVerb.Add.class, RunVerb.Propose.class })
final class RunVerb implements Runnable {

	@Spec
	private CommandSpec spec;

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public void run() {
		SettingsVerb.askForVerb(spec);
	}

	@Command(name = "add", description = "Keeps a run and counts its metres on the edge of its tool; writes its id.", sortOptions = false)
	static final class Add implements Callable<Integer> {

		@Spec
		private CommandSpec spec;

		@Parameters(paramLabel = "JOB", description = "The id of the job.")
		private String job;

		@Mixin
		private WorkOptions work;

		@Mixin
		private SettingsTrialVerb.Values values;

		@Option(names = "--verdict", required = true, paramLabel = "VERDICT", description = "through, not-through, torn, carrier-cut or corners-lifted.")
		private String verdict;

		@Option(names = "--length", required = true, paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Of all lines that were worked, all passes counted, such as 12500mm.")
		private Double length;

		@Option(names = "--remark", paramLabel = "TEXT", defaultValue = "", description = "Anything worth remembering.")
		private String remark;

		@Mixin
		private StudioOption studio = new StudioOption();

		@Option(names = "--help", usageHelp = true, description = "Shows this help.")
		private boolean help;

		@Override
		public Integer call() throws Refusal {
			studio.choose();
			List<String> lines = SettingsDesk.change(settings -> {
				String id = Numbering.next("run", settings.runs().stream().map(Run::id).toList());
				settings.add(new Run(id, Instant.now(), job, work.stock(), work.setup(settings), values.settings(),
						SettingsTrialVerb.verdict(verdict), length / 1000, remark));
				Tool tool = work.tool(settings);
				return BladeWear.warning(tool, 0, 1).map(warning -> List.of(id, "caution: " + warning))
						.orElse(List.of(id));
			});
			lines.forEach(spec.commandLine().getOut()::println);
			return Frisket.DONE;
		}
	}

	@Command(name = "propose", description = "Proposes what worked before for this job or its stock.", sortOptions = false)
	static final class Propose implements Callable<Integer> {

		@Spec
		private CommandSpec spec;

		@Parameters(paramLabel = "JOB", description = "The id of the job that is made again.")
		private String job;

		@Mixin
		private WorkOptions work;

		@Mixin
		private StudioOption studio = new StudioOption();

		@Option(names = "--help", usageHelp = true, description = "Shows this help.")
		private boolean help;

		@Override
		public Integer call() throws Refusal {
			studio.choose();
			PrintWriter out = spec.commandLine().getOut();
			SettingsDesk.read(settings -> {
				Optional<Reorder> found = Reorder.of(settings.runs(), job, work.stock().stock(), work.setup(settings));
				if (found.isEmpty()) {
					out.println("nothing comparable was run yet; see frisket settings advise");
					return null;
				}
				Run run = found.get().run();
				out.println(SettingsText.line(run.settings(), work.machine(settings)));
				found.get().words().forEach(words -> out.println("  " + words));
				out.println("  " + run.id() + ", " + Length.text(run.metres() * 1000, 0) + " of line"
						+ (run.remark().isEmpty() ? "" : ": " + run.remark()));
				return null;
			});
			return Frisket.DONE;
		}
	}
}
