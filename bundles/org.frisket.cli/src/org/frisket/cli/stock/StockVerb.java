package org.frisket.cli.stock;

import org.frisket.cli.line.VerbGroup;

import picocli.CommandLine.Command;

/** What the studio cuts: its stock, and what paper weighs. */
@Command(name = "stock", description = "Keeps the studio's stock, and tells what paper weighs.", synopsisSubcommandLabel = "WHAT", //
		subcommands = { StockConvertVerb.class, StockWeighVerb.class, StockMeasureVerb.class, StockListVerb.class,
				StockShowVerb.class, StockAddVerb.class, StockSetVerb.class, StockRemoveVerb.class, StockImportVerb.class,
				StockExportVerb.class, StockCatalogueVerb.class })
public final class StockVerb extends VerbGroup {
}
