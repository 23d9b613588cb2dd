package org.frisket.cli.line;

import java.io.PrintWriter;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What every verb takes that works for a studio, and where it answers. */
public final class VerbOptions {

	@Spec(Spec.Target.MIXEE)
	private CommandSpec verb;

	@Mixin
	private StudioOption studio = new StudioOption();

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	/** To be called before anything is looked up. */
	public void chooseStudio() throws Refusal {
		studio.choose();
	}

	public PrintWriter out() {
		return verb.commandLine().getOut();
	}

	public PrintWriter err() {
		return verb.commandLine().getErr();
	}
}
