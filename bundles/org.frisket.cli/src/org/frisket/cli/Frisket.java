package org.frisket.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Set;

import org.frisket.cli.files.CleanVerb;
import org.frisket.cli.files.ExportVerb;
import org.frisket.cli.files.ImportVerb;
import org.frisket.cli.jobs.ComposeVerb;
import org.frisket.cli.jobs.InspectVerb;
import org.frisket.cli.lettering.FontsVerb;
import org.frisket.cli.lettering.GlyphsVerb;
import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.SetOnce;
import org.frisket.cli.line.Status;
import org.frisket.cli.orders.OrdersVerb;
import org.frisket.cli.print.PrintAndCutVerb;
import org.frisket.cli.print.RegisterVerb;
import org.frisket.cli.print.TraceVerb;
import org.frisket.cli.runs.RunVerb;
import org.frisket.cli.settings.SettingsVerb;
import org.frisket.cli.sheets.ImposeVerb;
import org.frisket.cli.stock.StockVerb;
import org.frisket.geometry.Tolerance;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** {@code frisket VERB}: the root of the verbs. */
@Command(name = "frisket", description = "Carries a studio's job from wording to cut-ready sheets.", //
		synopsisSubcommandLabel = "VERB", subcommands = { ComposeVerb.class, InspectVerb.class, FontsVerb.class,
				GlyphsVerb.class, ExportVerb.class, CleanVerb.class, ImportVerb.class, StockVerb.class,
				SettingsVerb.class, ImposeVerb.class, RunVerb.class, TraceVerb.class, RegisterVerb.class,
				PrintAndCutVerb.class, OrdersVerb.class }, //
		footer = { "", "Exit status: 0 done; 1 done, but blocking findings remain; 2 wrong use or unreadable input." })
public final class Frisket implements Runnable {

	@Spec
	private CommandSpec spec;

	@CommandLine.Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	private Frisket() {
	}

	/** Runs one command line and answers its exit status. Nothing is thrown and the process is not ended. */
	public static int run(String[] arguments, PrintStream out, PrintStream err) {
		PrintWriter answers = new PrintWriter(out, true, StandardCharsets.UTF_8);
		PrintWriter complaints = new PrintWriter(err, true, StandardCharsets.UTF_8);
		CommandLine line = new CommandLine(new Frisket());
		helpEach(line);
		line.setOut(answers).setErr(complaints);
		line.setUsageHelpAutoWidth(true);
		line.setCaseInsensitiveEnumValuesAllowed(true);
		line.registerConverter(Tolerance.class, text -> new Tolerance(Conversions.positiveLength(text)));
		line.registerConverter(Integer.class, Conversions::whole).registerConverter(int.class, Conversions::whole);
		line.registerConverter(Double.class, Conversions::number).registerConverter(double.class, Conversions::number);
		line.registerConverter(LocalDate.class, Conversions::day).registerConverter(Path.class, Conversions::path);
		line.setExecutionStrategy(parsed -> {
			SetOnce.check(parsed);
			return new CommandLine.RunLast().execute(parsed);
		});
		line.setParameterExceptionHandler((e, args) -> refuse(e.getCommandLine(), wrongUse(e) + " (see "
				+ e.getCommandLine().getCommandSpec().qualifiedName() + " --help)"));
		line.setExecutionExceptionHandler((e, commandLine, result) -> refuse(commandLine, reason(e)));
		try {
			return line.execute(arguments);
		} catch (Error e) {
			// too little memory, say; the platform would end as if all were done
			return refuse(line, broken(e));
		}
	}

	/** Verbs of groups that share their options have none of their own for it. */
	private static void helpEach(CommandLine line) {
		if (line.getCommandSpec().findOption("--help") == null) {
			line.getCommandSpec().addOption(OptionSpec.builder("--help").usageHelp(true).description("Shows this help.").build());
		}
		line.getSubcommands().values().forEach(Frisket::helpEach);
	}

	private static String wrongUse(ParameterException e) {
		Set<String> verbs = e.getCommandLine().getSubcommands().keySet();
		if (e instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption() && !verbs.isEmpty()) {
			return "there is no verb “" + unmatched.getUnmatched().get(0) + "”; there are " + String.join(", ", verbs);
		}
		// a slip of the library's own
		return e.getMessage().replace("for option option", "for option");
	}

	private static int refuse(CommandLine verb, String message) {
		verb.getErr().println(verb.getCommandSpec().qualifiedName() + ": " + message.lines().findFirst().orElse(""));
		return Status.REFUSED;
	}

	private static String reason(Exception e) {
		return e instanceof Refusal ? e.getMessage() : broken(e);
	}

	private static String broken(Throwable e) {
		if (e instanceof OutOfMemoryError) {
			return "there is too little memory for this";
		}
		StackTraceElement[] at = e.getStackTrace();
		return "this is a mistake of the program, please report it: " + e + (at.length == 0 ? "" : " at " + at[0]);
	}

	@Override
	public void run() {
		throw new ParameterException(spec.commandLine(), "say what to do: "
				+ String.join(", ", spec.subcommands().keySet()));
	}
}
