package org.frisket.cli.stock;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockShelf;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The studio's stock. */
@Command(name = "list", description = "Lists the studio's stock by name.", sortOptions = false)
final class StockListVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Option(names = "--low", description = "Only what it is time to order.")
	private boolean low;

	@Option(names = "--json", description = "Writes JSON for machines; g/m² and mm.")
	private boolean json;

	@Mixin
	private ShelfOption shelf = new ShelfOption();

	@Override
	public Integer call() throws Refusal {
		List<Stock> stocks = shelf.read(StockShelf::list).stream().map(ShelvedStock::stock)
				.filter(stock -> !low || stock.isLow()).toList();
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			out.println(Json.text(StockJson.list("stock", stocks.stream().map(StockJson::stock).toList())));
		} else if (stocks.isEmpty()) {
			out.println("there is no stock" + (low ? " that is low" : "; frisket stock catalogue shows what could be added"));
		} else {
			StockReport.list(out, stocks);
		}
		return Status.DONE;
	}
}
