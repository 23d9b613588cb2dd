package org.frisket.studio.csv;

import org.eclipse.osgi.util.NLS;

/**
 * Something a table says wrongly.
 *
 * @param row    as a spreadsheet counts, the headers being row 1
 * @param column its header as it stands in the file; empty if the row as a whole is wrong
 */
public record CsvProblem(long row, String column, String message) {

	@Override
	public String toString() {
		return column.isEmpty() ? NLS.bind(Messages.CsvProblem_row, row, message)
				: NLS.bind(Messages.CsvProblem_cell, new Object[] { row, column, message });
	}
}
