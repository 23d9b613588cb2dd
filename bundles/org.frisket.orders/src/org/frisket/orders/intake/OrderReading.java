package org.frisket.orders.intake;

import java.util.List;

import org.frisket.orders.NewOrder;
import org.frisket.studio.csv.CsvProblem;

/**
 * What a table of orders came to.
 *
 * @param head     of the table as it stands there; empty if it could not be read
 * @param mapping  by which it was read, guesses and all
 * @param rows     the good ones
 * @param problems by row; none if the table can be taken in
 * @param remarks  on how the file was read
 */
public record OrderReading(TableHead head, OrderMapping mapping, List<Row> rows, List<CsvProblem> problems,
		List<String> remarks) {

	/**
	 * An order and the row it stands in.
	 *
	 * @param number    as a spreadsheet counts, the headers being row 1
	 * @param reference what it is called where it comes from; empty if nothing is said
	 */
	public record Row(long number, NewOrder order, String reference) {
	}

	public OrderReading {
		rows = List.copyOf(rows);
		problems = List.copyOf(problems);
		remarks = List.copyOf(remarks);
	}
}
