package org.frisket.cli.stock;

import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.material.ShelvedStock;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes a stock off the shelf. */
@Command(name = "remove", description = "Removes a stock from the studio's.", sortOptions = false)
final class StockRemoveVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Parameters(paramLabel = "ID|NAME", description = "The stock.")
	private String stock;

	@Mixin
	private ShelfOption shelf = new ShelfOption();

	@Override
	public Integer call() throws Refusal {
		ShelvedStock removed = shelf.change(there -> {
			ShelvedStock found = ShelfOption.find(there, stock);
			there.remove(found.stock().id(), found.revision());
			return found;
		});
		spec.commandLine().getOut().println("removed “" + removed.stock().name() + "”");
		return Status.DONE;
	}
}
