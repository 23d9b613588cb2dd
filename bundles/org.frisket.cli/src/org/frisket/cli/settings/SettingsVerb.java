package org.frisket.cli.settings;

import org.frisket.cli.line.VerbGroup;

import picocli.CommandLine.Command;

/** Tools, machines, trials, and what they say of the settings to begin with. */
@Command(name = "settings", description = "Advises blade exposure, pressure, speed and passes, and keeps what was tried.", //
		synopsisSubcommandLabel = "VERB", subcommands = { SettingsAdviseVerb.class, SettingsTrialVerb.class,
				TestSheetVerb.class, VerdictsVerb.class, CalibrateVerb.class, ToolVerb.class, MachineVerb.class,
				RunVerb.class, RulesVerb.class })
public final class SettingsVerb extends VerbGroup {
}
