package org.frisket.cli.stock;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;

import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import org.frisket.cli.line.Json;
import org.frisket.cli.line.Status;
import org.frisket.prepare.StockCatalogues;

/** Stock to choose from. */
@Command(name = "catalogue", description = "Lists the stock of the catalogues at hand; frisket stock add --from takes it over.", sortOptions = false)
final class StockCatalogueVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Option(names = "--json", description = "Writes JSON for machines; g/m² and mm.")
	private boolean json;

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public Integer call() {
		StockCatalogues catalogues = StockCatalogues.open();
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			List<JsonObject> stocks = catalogues.entries().stream().map(entry -> {
				JsonObject object = StockJson.stock(entry.stock());
				object.addProperty("catalogue", entry.catalogue());
				object.addProperty("bundle", entry.bundle());
				return object;
			}).toList();
			out.println(Json.text(StockJson.list("stock", stocks)));
		} else {
			StockReport.list(out, catalogues.entries().stream().map(StockCatalogues.Entry::stock).toList());
		}
		catalogues.failures().forEach(spec.commandLine().getErr()::println);
		return Status.DONE;
	}
}
