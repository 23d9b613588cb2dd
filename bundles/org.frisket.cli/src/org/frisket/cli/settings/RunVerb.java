package org.frisket.cli.settings;

import java.io.PrintWriter;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbGroup;
import org.frisket.cli.line.VerbOptions;
import org.frisket.geometry.Length;
import org.frisket.material.desk.Numbering;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.BladeWear;
import org.frisket.material.trials.Reorder;
import org.frisket.material.trials.Run;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Runs of jobs, and what worked before. */
@Command(name = "run", description = "Keeps what jobs were run with, and proposes what worked.", subcommands = {
		RunVerb.Add.class, RunVerb.Propose.class, RunVerb.Listing.class })
final class RunVerb extends VerbGroup {

	@Command(name = "add", description = "Keeps a run and counts its metres on the edge of its tool; writes its id.", sortOptions = false)
	static final class Add implements Callable<Integer> {

		@Parameters(paramLabel = "JOB", description = "The id of the job, or its file.")
		private String job;

		@Mixin
		private WorkOptions work;

		@Mixin
		private SettingsTrialVerb.Values values;

		@Option(names = "--verdict", required = true, paramLabel = "VERDICT", description = "through, not-through, torn, carrier-cut or corners-lifted.")
		private String verdict;

		@Option(names = "--length", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Of all lines that were worked, all passes counted, such as 12500mm (default that of the lines in the job's file, times --passes).")
		private Double length;

		@Option(names = "--remark", paramLabel = "TEXT", defaultValue = "", description = "Anything worth remembering.")
		private String remark;

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			work.stock();
			WorkedJob worked = WorkedJob.of(job, work, values.passes(), length);
			List<String> lines = SettingsDesk.change(settings -> {
				String id = Numbering.next("run", settings.runs().stream().map(Run::id).toList());
				settings.add(new Run(id, Instant.now(), worked.id(), work.stock(), work.setup(settings),
						values.settings(work.machine(settings)),
						SettingsTrialVerb.verdict(verdict), worked.mm() / 1000, remark));
				Tool tool = work.tool(settings);
				return BladeWear.warning(tool, 0, 1).map(warning -> List.of(id, "caution: " + warning))
						.orElse(List.of(id));
			});
			lines.forEach(verb.out()::println);
			return Status.DONE;
		}
	}

	@Command(name = "propose", description = "Proposes what worked before for this job or its stock.", sortOptions = false)
	static final class Propose implements Callable<Integer> {

		@Parameters(paramLabel = "JOB", description = "The id of the job that is made again.")
		private String job;

		@Mixin
		private WorkOptions work;

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			work.stock();
			PrintWriter out = verb.out();
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
			return Status.DONE;
		}
	}

	@Command(name = "list", description = "Lists runs, the oldest first.", sortOptions = false)
	static final class Listing implements Callable<Integer> {

		@Option(names = "--job", paramLabel = "JOB", description = "Only those of this job.")
		private String job;

		@Option(names = "--stock", paramLabel = "ID", description = "Only those in this stock.")
		private String stock;

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			for (Run run : SettingsDesk.read(settings -> settings.runs())) {
				if ((job == null || job.equals(run.job())) && (stock == null || stock.equals(run.stock().stock()))) {
					verb.out().println(line(run));
				}
			}
			return Status.DONE;
		}

		private static String line(Run run) {
			return "%s %s %s in %s: %s with %s on %s, exposure %s mm, pressure %s, speed %s, passes %d, %s: %s%s".formatted(
					run.id(), run.at().atZone(ZoneOffset.UTC).toLocalDate(), run.job(),
					run.stock().stock().isEmpty() ? run.stock().family().name().toLowerCase(Locale.ROOT) : run.stock().stock(),
					run.setup().operation().getLiteral(), run.setup().tool(), run.setup().machine(),
					SettingsText.plain(run.settings().exposure()), SettingsText.plain(run.settings().pressure()),
					SettingsText.plain(run.settings().speed()), run.settings().passes(),
					Length.text(run.metres() * 1000, 0), run.verdict().word(),
					run.remark().isEmpty() ? "" : " (" + run.remark() + ")");
		}
	}
}
