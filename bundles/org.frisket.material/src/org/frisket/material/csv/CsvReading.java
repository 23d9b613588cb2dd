package org.frisket.material.csv;

import java.util.List;

import org.frisket.material.Stock;
import org.frisket.studio.csv.CsvProblem;

/**
 * What a table came to.
 *
 * @param rows     the good ones
 * @param problems by row; none if the table can be taken over whole
 * @param remarks  on how the file was read
 * @param usable   false if the headers are such that no row can be read
 */
public record CsvReading(List<Row> rows, List<CsvProblem> problems, List<String> remarks, boolean usable) {

	/** A stock and the row it stands in. */
	public record Row(long number, Stock stock) {
	}

	public CsvReading {
		rows = List.copyOf(rows);
		problems = List.copyOf(problems);
		remarks = List.copyOf(remarks);
	}
}
