package org.frisket.material.csv;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String CsvColumn_noUnit;
	public static String CsvColumn_point;
	public static String CsvColumn_unit;
	public static String CsvHeaders_missing;
	public static String CsvHeaders_twice;
	public static String CsvHeaders_unknown;
	public static String StockCsv_cells;
	public static String StockCsv_empty;
	public static String StockCsv_encoding;
	public static String StockCsv_twice;
	public static String StockImport_idTaken;
	public static String StockImport_nameTaken;

	static {
		initializeMessages("org.frisket.material.csv.messages", Messages.class);
	}

	private Messages() {
	}
}
