package org.frisket.orders.intake;

import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderException;
import org.frisket.orders.internal.ManyOrders;
import org.frisket.orders.internal.ReferenceRows;
import org.frisket.orders.internal.Transactions;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.csv.CsvProblem;

/** Takes orders from tables into a studio's order book. Every call opens the studio's database. */
public final class OrderIntake {

	private final Transactions transactions;

	public OrderIntake(StudioFolder studio) {
		this(studio, Clock.systemUTC());
	}

	/** @param clock tells the time of changes */
	public OrderIntake(StudioFolder studio, Clock clock) {
		transactions = new Transactions(studio, clock);
	}

	/**
	 * Reads a table and compares it with the order book. What is wrong with it stands in the result.
	 *
	 * @param said      of the columns; the others are guessed
	 * @param skipKnown whether orders that came before, by their references, are left out; else they are problems
	 */
	public OrderReading read(byte[] file, OrderMapping said, boolean skipKnown) throws IOException, OrderException {
		OrderReading table = OrderTable.read(file, said);
		Map<String, Long> known = transactions.read(ReferenceRows::numbers);
		List<OrderReading.Row> fresh = new ArrayList<>();
		List<CsvProblem> problems = new ArrayList<>(table.problems());
		List<String> remarks = new ArrayList<>(table.remarks());
		for (OrderReading.Row row : table.rows()) {
			Long number = known.get(row.reference());
			if (number == null) {
				fresh.add(row);
			} else if (skipKnown) {
				remarks.add(NLS.bind(Messages.OrderIntake_skipped, new Object[] { row.number(), row.reference(), number }));
			} else {
				problems.add(new CsvProblem(row.number(), table.mapping().headers().get(OrderField.REFERENCE),
						NLS.bind(Messages.OrderIntake_known, row.reference(), number)));
			}
		}
		problems.sort(Comparator.comparingLong(CsvProblem::row));
		return new OrderReading(table.head(), table.mapping(), fresh, problems, remarks);
	}

	/**
	 * Takes in all rows of a table, in one transaction.
	 *
	 * @throws OrderException           if one of them has come by another desk since it was read
	 * @throws IllegalArgumentException if the table has problems
	 */
	public List<Entry> takeIn(OrderReading table, String person) throws IOException, OrderException {
		return takeIn(table, person, Monitor.NONE);
	}

	/**
	 * The same.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels; nothing is taken in then
	 */
	public List<Entry> takeIn(OrderReading table, String person, Monitor monitor) throws IOException, OrderException {
		if (!table.problems().isEmpty()) {
			throw new IllegalArgumentException(table.problems().get(0).toString());
		}
		return transactions.change(connection -> {
			Map<String, Long> known = ReferenceRows.numbers(connection);
			List<ManyOrders.Wanted> wanted = new ArrayList<>();
			for (OrderReading.Row row : table.rows()) {
				Long number = known.get(row.reference());
				if (number != null) {
					throw new OrderException(NLS.bind(Messages.OrderIntake_known, row.reference(), number));
				}
				wanted.add(new ManyOrders.Wanted(row.order(), row.reference()));
			}
			return ManyOrders.takeIn(connection, wanted, transactions.now(), person, monitor);
		});
	}
}
