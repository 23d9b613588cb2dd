package org.frisket.cli.stock;

import java.io.IOException;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.material.ShelfException;
import org.frisket.material.Stock;
import org.frisket.material.StockBuilder;
import org.frisket.material.StockIds;
import org.frisket.material.StockShelf;
import org.frisket.prepare.StockCatalogues;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A new stock. */
@Command(name = "add", description = "Adds a stock to the studio's, new or from a catalogue.", sortOptions = false)
final class StockAddVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Option(names = "--from", paramLabel = "CATALOGUE-ID", description = "A stock of a catalogue to begin with; see frisket stock catalogue.")
	private String from;

	@Option(names = "--id", paramLabel = "ID", description = "By which jobs refer to it (default one made of its name).")
	private String id;

	@Mixin
	private StockOptions options = new StockOptions();

	@Option(names = "--json", description = "Writes the stock as JSON for machines.")
	private boolean json;

	@Mixin
	private ShelfOption shelf = new ShelfOption();

	@Override
	public Integer call() throws Refusal {
		StockBuilder builder;
		try {
			builder = from == null ? Stock.named(null) : catalogued().change();
			options.apply(builder);
			if (id != null) {
				builder.id(id);
			}
			// whatever is wrong is told before a studio is touched
			builder.build();
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
		Stock added = shelf.change(there -> add(there, builder));
		spec.commandLine().getOut().println(json ? Json.text(StockJson.stock(added))
				: "added “" + added.name() + "” as " + added.id());
		return Status.DONE;
	}

	private Stock catalogued() throws Refusal {
		StockCatalogues catalogues = StockCatalogues.open();
		catalogues.failures().forEach(spec.commandLine().getErr()::println);
		return catalogues.find(from).orElseThrow(
				() -> new Refusal("--from: no catalogue has “" + from + "”; see frisket stock catalogue"));
	}

	private Stock add(StockShelf there, StockBuilder builder) throws IOException, ShelfException {
		if (builder.id().isEmpty()) {
			builder.id(StockIds.free(builder.build().name(), there.ids()::contains));
		}
		return there.add(builder.build()).stock();
	}
}
