package org.frisket.cli.orders;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Databases;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Where the order book of a studio is. */
@Command(name = "database", description = "Has all desks of the studio use the database given with --db from now on, or that in the studio's folder; says which one it is.", sortOptions = false)
final class OrdersDatabaseVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Option(names = "--own", description = "Use the one in the studio's folder.")
	private boolean own;

	@Override
	public Integer call() throws Refusal {
		orders.chooseStudio();
		if (own && orders.address().isPresent()) {
			throw new Refusal("--own or --db, not both");
		}
		try {
			if (own || orders.address().isPresent()) {
				Databases.prefer(Studio.folder(), orders.address());
			}
			orders.out().println(Databases.address(Studio.folder()).orElseGet(() -> Studio.folder().database().toString()));
			return Status.DONE;
		} catch (IOException e) {
			throw new Refusal(e);
		}
	}
}
