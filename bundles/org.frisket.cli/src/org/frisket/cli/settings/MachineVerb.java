package org.frisket.cli.settings;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbGroup;
import org.frisket.cli.line.VerbOptions;
import org.frisket.geometry.options.Option;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.ManualQuestions;
import org.frisket.material.tools.Problem;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The studio's machines. */
@Command(name = "machine", description = "Keeps, removes and lists the studio's machines, as their manuals describe them.", subcommands = {
		MachineVerb.Add.class, MachineVerb.Remove.class, MachineVerb.Listing.class })
final class MachineVerb extends VerbGroup {

	@Command(name = "add", description = "Keeps a machine; one with the same id is replaced.", sortOptions = false)
	static final class Add implements Callable<Integer> {

		@Parameters(paramLabel = "ID", description = "What tells it from other machines.")
		private String id;

		@picocli.CommandLine.Option(names = "--set", paramLabel = "OPTION=VALUE", description = "What its manual says; see frisket settings machine list --questions.")
		private Map<String, String> values = Map.of();

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			List<Problem> problems = MachineOptions.problems(values);
			if (!problems.isEmpty()) {
				throw new Refusal(String.join("; ", problems.stream().map(Problem::message).toList()));
			}
			if (id.equals(Machine.plain().id())) {
				throw new Refusal("“" + id + "” stands for no particular machine; call yours something else");
			}
			SettingsDesk.change(settings -> {
				settings.save(MachineOptions.machine(id, values));
				return null;
			});
			return Status.DONE;
		}
	}

	@Command(name = "remove", description = "Takes a machine away; what was tried and run with it is kept.", sortOptions = false)
	static final class Remove implements Callable<Integer> {

		@Parameters(paramLabel = "ID", description = "Which one.")
		private String id;

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			SettingsDesk.change(settings -> {
				if (!settings.removeMachine(id)) {
					throw new Refusal("the studio has no machine “" + id + "”; see frisket settings machine list");
				}
				return null;
			});
			return Status.DONE;
		}
	}

	@Command(name = "list", description = "Lists the studio's machines.", sortOptions = false)
	static final class Listing implements Callable<Integer> {

		@picocli.CommandLine.Option(names = "--questions", description = "Lists what to look up in a machine's manual instead.")
		private boolean questions;

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			var out = verb.out();
			if (questions) {
				for (ManualQuestions.Question question : ManualQuestions.all()) {
					out.println(question.words());
					for (Option option : question.options()) {
						out.printf("    %s=%s: %s%s%n", option.name(), option.initial(), option.description(),
								option.choices().isEmpty() ? "" : " (" + String.join(", ", option.choices()) + ")");
					}
				}
				return Status.DONE;
			}
			for (Machine machine : SettingsDesk.read(settings -> settings.machines())) {
				out.println(machine.id() + ": " + MachineOptions.texts(machine));
			}
			return Status.DONE;
		}
	}
}
