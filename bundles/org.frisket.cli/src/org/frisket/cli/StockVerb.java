package org.frisket.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What the studio cuts: its stock, and what paper weighs. */
@Command(name = "stock", description = "Keeps the studio's stock, and tells what paper weighs.", synopsisSubcommandLabel = "WHAT", //
		subcommands = { StockConvertVerb.class, StockWeighVerb.class, StockMeasureVerb.class, StockListVerb.class,
				StockShowVerb.class, StockAddVerb.class, StockSetVerb.class, StockRemoveVerb.class, StockImportVerb.class,
				StockExportVerb.class, StockCatalogueVerb.class })
final class StockVerb implements Runnable {

	@Spec
	private CommandSpec spec;

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public void run() {
		throw new ParameterException(spec.commandLine(), "say what to do: "
				+ String.join(", ", spec.subcommands().keySet()));
	}
}
