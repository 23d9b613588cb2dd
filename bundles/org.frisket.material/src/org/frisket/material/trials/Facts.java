package org.frisket.material.trials;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;

import org.frisket.material.StockFamily;
import org.frisket.model.OperationKind;

/** The columns that trials, sheets and runs share. */
record Facts(StockFacts stock, Setup setup, Settings settings) {

	static final int COLUMNS = 12;

	/** The values of the columns in their order. */
	static List<Object> of(StockFacts stock, Setup setup, Settings settings) {
		return List.of(stock.stock(), stock.family().name(), stock.grammage(), stock.caliperMm(), stock.abrasion(),
				setup.machine(), setup.tool(), setup.operation().getLiteral(), settings.exposure(), settings.pressure(),
				settings.speed(), settings.passes());
	}

	/** @param first number of the first of the columns */
	static Facts read(ResultSet row, int first) throws SQLException {
		return new Facts(
				new StockFacts(row.getString(first), StockFamily.valueOf(row.getString(first + 1)),
						row.getDouble(first + 2), row.getDouble(first + 3), row.getDouble(first + 4)),
				new Setup(row.getString(first + 5), row.getString(first + 6),
						OperationKind.get(row.getString(first + 7))),
				new Settings(row.getDouble(first + 8), row.getDouble(first + 9), row.getDouble(first + 10),
						row.getInt(first + 11)));
	}
}
