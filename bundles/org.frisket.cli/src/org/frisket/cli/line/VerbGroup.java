package org.frisket.cli.line;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A verb that does nothing without one of its own verbs. */
public abstract class VerbGroup implements Runnable {

	@Spec
	private CommandSpec spec;

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public final void run() {
		throw new ParameterException(spec.commandLine(),
				"say what to do: " + String.join(", ", spec.subcommands().keySet()));
	}
}
