package org.frisket.cli.settings;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbGroup;
import org.frisket.cli.line.VerbOptions;
import org.frisket.material.desk.Numbering;
import org.frisket.material.tools.Edge;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.NativeScale;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Trial;
import org.frisket.material.trials.Verdict;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Single test cuts. */
@Command(name = "trial", description = "Keeps and lists test cuts.", subcommands = { SettingsTrialVerb.Add.class,
		SettingsTrialVerb.Listing.class })
final class SettingsTrialVerb extends VerbGroup {

	static Verdict verdict(String word) throws Refusal {
		return Verdict.of(word).orElseThrow(() -> new Refusal("“" + word + "” is no verdict; there are "
				+ Arrays.stream(Verdict.values()).map(Verdict::word).collect(Collectors.joining(", "))));
	}

	/** What a line is worked with. */
	static final class Values {

		@Option(names = "--exposure", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "How far the blade stood out.")
		private Double exposure;

		@Option(names = "--pressure", required = true, paramLabel = "STEPS", description = "In the steps of the machine.")
		private double pressure;

		@Option(names = "--speed", required = true, paramLabel = "STEPS", description = "In the steps of the machine.")
		private double speed;

		@Option(names = "--passes", paramLabel = "N", defaultValue = "1", description = "Default ${DEFAULT-VALUE}.")
		private int passes;

		int passes() throws Refusal {
			if (passes < 1) {
				throw new Refusal("--passes: 1 at least");
			}
			return passes;
		}

		/** Advice rests on them: what the machine cannot be set to is refused. */
		Settings settings(Machine machine) throws Refusal {
			return new Settings(exposure == null ? 0 : exposure, on("--pressure", machine.pressure(), pressure),
					on("--speed", machine.speed(), speed), passes());
		}

		private static double on(String option, NativeScale scale, double value) throws Refusal {
			if (!(value >= scale.least() && value <= scale.most())) {
				throw new Refusal("%s: %s is not between %s and %s %s, which the machine can be set to".formatted(option,
						SettingsText.plain(value), SettingsText.plain(scale.least()), SettingsText.plain(scale.most()),
						scale.unit()));
			}
			return value;
		}
	}

	@Command(name = "add", description = "Keeps a test cut and what came of it; writes its id.", sortOptions = false)
	static final class Add implements Callable<Integer> {

		@Mixin
		private WorkOptions work;

		@Mixin
		private Values values;

		@Option(names = "--verdict", required = true, paramLabel = "VERDICT", description = "through, not-through, torn, carrier-cut or corners-lifted.")
		private String verdict;

		@Option(names = "--day", paramLabel = "DATE", description = "When it was made, such as 2031-05-17 (default today).")
		private LocalDate day;

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			work.stock();
			String id = SettingsDesk.change(settings -> {
				List<String> ids = settings.trials().stream().map(Trial::id).toList();
				Trial trial = new Trial(Numbering.next("trial", ids), day == null ? LocalDate.now() : day, work.stock(),
						work.setup(settings), values.settings(work.machine(settings)), verdict(verdict),
						work.tool(settings).edge().map(Edge::share).orElse(0.0), "");
				settings.add(trial);
				return trial.id();
			});
			verb.out().println(id);
			return Status.DONE;
		}
	}

	@Command(name = "list", description = "Lists test cuts, those of test sheets among them.", sortOptions = false)
	static final class Listing implements Callable<Integer> {

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			for (Trial trial : SettingsDesk.read(settings -> settings.trials())) {
				Settings with = trial.settings();
				verb.out().printf("%s %s %s%s %s g/m² %s mm: %s with %s on %s, exposure %s mm, pressure %s, "
						+ "speed %s, passes %d: %s%n", trial.id(), trial.day(), trial.stock().family().name().toLowerCase(java.util.Locale.ROOT),
						trial.stock().stock().isEmpty() ? "" : " " + trial.stock().stock(),
						SettingsText.plain(trial.stock().grammage()), SettingsText.plain(trial.stock().caliperMm()),
						trial.setup().operation().getLiteral(), trial.setup().tool(), trial.setup().machine(),
						SettingsText.plain(with.exposure()), SettingsText.plain(with.pressure()),
						SettingsText.plain(with.speed()), with.passes(), trial.verdict().word());
			}
			return Status.DONE;
		}
	}
}
