package org.frisket.cli.stock;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockShelf;
import org.frisket.material.csv.StockCsv;
import org.frisket.model.WholeFile;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Stock as a table. */
@Command(name = "export", description = "Writes the studio's stock as a table of comma-separated values.", sortOptions = false)
final class StockExportVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Parameters(paramLabel = "FILE", description = "What to write.")
	private Path file;

	@Mixin
	private ShelfOption shelf = new ShelfOption();

	@Override
	public Integer call() throws Refusal {
		List<Stock> stocks = shelf.read(StockShelf::list).stream().map(ShelvedStock::stock).toList();
		try {
			StockCsv.write(stocks, file);
		} catch (IOException e) {
			throw new Refusal(file + ": " + WholeFile.reason(e));
		}
		spec.commandLine().getOut().println("wrote " + file + ", " + stocks.size() + " in all");
		return Status.DONE;
	}
}
