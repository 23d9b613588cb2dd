package org.frisket.cli.orders;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.StudioOption;
import org.frisket.cli.line.VerbGroup;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** Every job of the studio. Its options may stand before or behind the verb. */
@Command(name = "orders", description = "Keeps the order book: every job, from enquiry to delivery.", synopsisSubcommandLabel = "WHAT", //
		subcommands = { OrdersListVerb.class, OrdersShowVerb.class, OrdersAddVerb.class, OrdersAgainVerb.class,
				OrdersStageVerb.class, OrdersTodayVerb.class, OrdersGangVerb.class, OrdersDoneVerb.class,
				OrdersDocketVerb.class, OrdersProofVerb.class, OrdersRulesVerb.class, OrdersCustomerVerb.class, OrdersReportVerb.class,
				OrdersImportVerb.class, OrdersExportVerb.class, OrdersDatabaseVerb.class, OrdersBackupVerb.class,
				OrdersRestoreVerb.class })
public final class OrdersVerb extends VerbGroup {

	@Spec
	private CommandSpec orders;

	@Option(names = "--studio", paramLabel = "DIR", scope = ScopeType.INHERIT, description = "The studio's folder, made if it is missing (default that in "
			+ Studio.VARIABLE + ", else one in your home).")
	private Path studio;

	@Option(names = "--db", paramLabel = "ADDRESS", scope = ScopeType.INHERIT, description = "The database of the order book, such as jdbc:postgresql://desk/studio (default what the studio prefers); a password is taken from "
			+ Databases.PASSWORD_VARIABLE + ".")
	private String address;

	@Option(names = "--by", paramLabel = "NAME", scope = ScopeType.INHERIT, description = "Who does it (default who is logged in).")
	private String person;

	@Option(names = "--json", scope = ScopeType.INHERIT, description = "Writes JSON for machines.")
	private boolean json;

	/** What is done with the order book. */
	interface Task<T> {
		T with(OrderBook book) throws IOException, OrderException, Refusal;
	}

	/** What is done with what else is kept of orders. */
	interface DeskTask<T> {
		T with(StudioFolder studio) throws IOException, OrderException, Refusal;
	}

	/** What is done with the studio as a whole. */
	interface StudioTask<T> {
		T with(StudioFolder studio) throws Refusal;
	}

	<T> T book(Task<T> task) throws Refusal {
		return desk(folder -> task.with(new OrderBook(folder)));
	}

	<T> T desk(DeskTask<T> task) throws Refusal {
		return studio(folder -> {
			try {
				return task.with(folder);
			} catch (IOException | OrderException | IllegalArgumentException e) {
				throw new Refusal(e);
			}
		});
	}

	/** With the database that was asked for. */
	<T> T studio(StudioTask<T> task) throws Refusal {
		chooseStudio();
		Databases.choose(Optional.ofNullable(address));
		try {
			return task.with(Studio.folder());
		} finally {
			Databases.choose(Optional.empty());
		}
	}

	void chooseStudio() throws Refusal {
		StudioOption.choose(studio);
	}

	Optional<String> address() {
		return Optional.ofNullable(address);
	}

	String person() {
		return person == null || person.isBlank() ? System.getProperty("user.name", "") : person.strip();
	}

	boolean isJson() {
		return json;
	}

	PrintWriter out() {
		return orders.commandLine().getOut();
	}

	PrintWriter err() {
		return orders.commandLine().getErr();
	}
}
