package org.frisket.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Tools, machines, trials, and what they say of the settings to begin with. */
@Command(name = "settings", description = "Advises blade exposure, pressure, speed and passes, and keeps what was tried.", //
		synopsisSubcommandLabel = "VERB", subcommands = { SettingsAdviseVerb.class, SettingsTrialVerb.class,
				TestSheetVerb.class, VerdictsVerb.class, CalibrateVerb.class, ToolVerb.class, MachineVerb.class,
				RunVerb.class })
final class SettingsVerb implements Runnable {

	@Spec
	private CommandSpec spec;

	@CommandLine.Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public void run() {
		askForVerb(spec);
	}

	static void askForVerb(CommandSpec spec) {
		throw new ParameterException(spec.commandLine(),
				"say what to do: " + String.join(", ", spec.subcommands().keySet()));
	}
}
