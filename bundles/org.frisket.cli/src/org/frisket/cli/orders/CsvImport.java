package org.frisket.cli.orders;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.work.TableFile;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderException;
import org.frisket.orders.intake.DateForm;
import org.frisket.orders.intake.OrderIntake;
import org.frisket.orders.intake.OrderMapping;
import org.frisket.orders.intake.OrderReading;
import org.frisket.orders.intake.RememberedMappings;
import org.frisket.studio.StudioFolder;

import picocli.CommandLine.Option;

/** How orders are taken in from a table. */
final class CsvImport {

	@Option(names = "--map", paramLabel = "FIELD=COLUMN,…", description = "Which columns of a table hold the title, customer, due, quantity, notes and reference, such as title=Name,due=Date; the others are guessed by their headers.")
	private String map;

	@Option(names = "--mapping", paramLabel = "NAME", description = "As it was remembered by this name.")
	private String mapping;

	@Option(names = "--remember", paramLabel = "NAME", description = "Remembers the mapping by this name, for all desks.")
	private String remember;

	@Option(names = "--dates", paramLabel = "iso|dmy|mdy", description = "In what order the table writes days (default: year first, or day first with dots).")
	private String dates;

	@Option(names = "--skip-known", description = "Leaves out rows whose reference has come before.")
	private boolean skipKnown;

	/** Whether anything was said that only a table can be told. */
	boolean isSaid() {
		return map != null || mapping != null || remember != null || dates != null || skipKnown;
	}

	List<Entry> run(Path file, StudioFolder studio, String person, PrintWriter err)
			throws IOException, OrderException, Refusal {
		// a name that is none is told before anything is taken in
		Optional<OrderMapping> before = remember == null ? Optional.empty() : new RememberedMappings(studio).recall(remember);
		OrderIntake intake = new OrderIntake(studio);
		TableFile csv = new TableFile(file);
		OrderReading table = intake.read(csv.bytes(), said(studio), skipKnown);
		table.remarks().forEach(remark -> err.println(file + ": " + remark));
		if (!table.problems().isEmpty()) {
			csv.tell(table.problems(), true, err);
		}
		List<Entry> taken = intake.takeIn(table, person);
		if (remember != null) {
			remember(studio, table.mapping(), before, err);
		}
		return taken;
	}

	/** The orders are in the book by now, whatever comes of this. */
	private void remember(StudioFolder studio, OrderMapping mapping, Optional<OrderMapping> before, PrintWriter err) {
		try {
			new RememberedMappings(studio).remember(remember, mapping);
			before.filter(other -> !other.equals(mapping))
					.ifPresent(other -> err.println("“" + remember + "” was remembered as " + other + " until now"));
		} catch (IOException e) {
			err.println("the orders are in the order book, but the mapping is not remembered: " + e.getMessage());
		}
	}

	private OrderMapping said(StudioFolder studio) throws IOException, Refusal {
		if (map != null && mapping != null) {
			throw new Refusal("--map or --mapping, not both");
		}
		OrderMapping said = map == null ? OrderMapping.GUESSED : OrderMapping.parse(map);
		if (mapping != null) {
			said = new RememberedMappings(studio).recall(mapping)
					.orElseThrow(() -> new Refusal("--mapping: nothing is remembered as “" + mapping + "”"));
		}
		return dates == null ? said : said.withDates(DateForm.of(dates));
	}
}
