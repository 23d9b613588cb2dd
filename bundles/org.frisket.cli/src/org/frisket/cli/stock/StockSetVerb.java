package org.frisket.cli.stock;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.material.ShelfException;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockBuilder;
import org.frisket.material.StockShelf;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Changes a stock. */
@Command(name = "set", description = "Changes what is said of a stock, and counts it up and down.", sortOptions = false)
final class StockSetVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Parameters(paramLabel = "ID|NAME", description = "The stock.")
	private String stock;

	@Mixin
	private StockOptions options = new StockOptions();

	@Option(names = "--more", paramLabel = "N", description = "So many have come in.")
	private BigDecimal more;

	@Option(names = "--take", paramLabel = "N", description = "So many have been used.")
	private BigDecimal take;

	@Option(names = "--json", description = "Writes the stock as JSON for machines.")
	private boolean json;

	@Mixin
	private ShelfOption shelf = new ShelfOption();

	@Override
	public Integer call() throws Refusal {
		amount("--more", more);
		amount("--take", take);
		Stock changed = shelf.change(this::change);
		spec.commandLine().getOut().println(json ? Json.text(StockJson.stock(changed))
				: "changed “" + changed.name() + "”; on hand: " + changed.onHand().toPlainString()
						+ (changed.isLow() ? ", low" : ""));
		return Status.DONE;
	}

	private static void amount(String option, BigDecimal amount) throws Refusal {
		if (amount != null && (amount.signum() < 0 || amount.precision() - amount.scale() > 12 || amount.scale() > 12)) {
			throw new Refusal(option + ": “" + amount + "” is no number of sheets");
		}
	}

	private Stock change(StockShelf there) throws IOException, ShelfException, Refusal {
		ShelvedStock found = ShelfOption.find(there, stock);
		StockBuilder builder = found.stock().change();
		options.apply(builder);
		Stock changed = builder.build();
		if (more != null) {
			changed = changed.withMore(more);
		}
		if (take != null) {
			changed = changed.withMore(take.negate());
		}
		return there.change(changed, found.revision()).stock();
	}
}
