package org.frisket.cli.stock;

import java.util.concurrent.Callable;

import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.material.Stock;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One stock. */
@Command(name = "show", description = "Tells all about one stock.", sortOptions = false)
final class StockShowVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Parameters(paramLabel = "ID|NAME", description = "The stock.")
	private String stock;

	@Option(names = "--json", description = "Writes JSON for machines; g/m² and mm.")
	private boolean json;

	@Mixin
	private ShelfOption shelf = new ShelfOption();

	@Override
	public Integer call() throws Refusal {
		Stock found = shelf.read(there -> ShelfOption.find(there, stock)).stock();
		if (json) {
			spec.commandLine().getOut().println(Json.text(StockJson.stock(found)));
		} else {
			StockReport.show(spec.commandLine().getOut(), found);
		}
		return Status.DONE;
	}
}
