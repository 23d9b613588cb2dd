package org.frisket.studio.csv;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String CsvProblem_cell;
	public static String CsvProblem_row;
	public static String CsvTable_quotes;
	public static String CsvText_latin1;

	static {
		initializeMessages("org.frisket.studio.csv.messages", Messages.class);
	}

	private Messages() {
	}
}
