package org.frisket.material.csv;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.ShelfException;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockField;
import org.frisket.material.StockShelf;
import org.frisket.studio.NameKey;
import org.frisket.studio.csv.CsvProblem;
import org.frisket.studio.store.StoreException;

/**
 * A table on its way to the shelf.
 *
 * @param rows     that can be taken in
 * @param problems of the table, and with what is on the shelf
 */
public record StockImport(List<CsvReading.Row> rows, List<CsvProblem> problems, List<String> remarks, boolean usable) {

	/**
	 * Reads a table and compares it with the shelf.
	 *
	 * @param replace whether a stock may take the place of the one that has its id
	 */
	public static StockImport of(byte[] file, StockShelf shelf, boolean replace) throws StoreException {
		Map<String, String> idsByName = new HashMap<>();
		Map<String, String> namesById = new HashMap<>();
		for (ShelvedStock shelved : shelf.list()) {
			idsByName.put(NameKey.of(shelved.stock().name()), shelved.stock().id());
			namesById.put(shelved.stock().id(), shelved.stock().name());
		}
		CsvReading reading = StockCsv.read(file, namesById.keySet());
		List<CsvProblem> problems = new ArrayList<>(reading.problems());
		List<CsvReading.Row> good = new ArrayList<>();
		Set<String> replaced = new HashSet<>();
		if (replace) {
			reading.rows().forEach(row -> replaced.add(row.stock().id()));
		}
		for (CsvReading.Row row : reading.rows()) {
			Stock stock = row.stock();
			String sameName = idsByName.get(NameKey.of(stock.name()));
			if (!replace && namesById.containsKey(stock.id())) {
				problems.add(new CsvProblem(row.number(), StockField.ID.word(),
						NLS.bind(Messages.StockImport_idTaken, stock.id())));
			} else if (sameName != null && !replaced.contains(sameName)) {
				problems.add(new CsvProblem(row.number(), StockField.NAME.word(),
						NLS.bind(Messages.StockImport_nameTaken, stock.name())));
			} else {
				good.add(row);
			}
		}
		problems.sort(Comparator.comparingLong(CsvProblem::row));
		return new StockImport(good, problems, reading.remarks(), reading.usable());
	}

	/**
	 * Takes in the good rows, all in one transaction.
	 *
	 * @throws ShelfException if the shelf has been changed since
	 */
	public void run(StockShelf shelf) throws StoreException, ShelfException {
		shelf.put(rows.stream().map(CsvReading.Row::stock).toList());
	}
}
