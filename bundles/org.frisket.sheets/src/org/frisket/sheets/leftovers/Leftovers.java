package org.frisket.sheets.leftovers;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;

import org.frisket.studio.store.Area;
import org.frisket.studio.store.Sql;
import org.frisket.studio.store.Store;
import org.frisket.studio.store.StoreException;

/**
 * The leftovers a studio has kept, in its store. They are in a table of their own and not on the stock shelf: a piece of
 * card is no other card, it shares the limits, the price and the settings of its stock, and there may be many of them.
 * Every method is a transaction of its own.
 */
public final class Leftovers {

	/** To be named when the store is opened. */
	public static final Area AREA = new Area("leftovers", Leftovers.class, "migrations");

	private static final int DECIMALS = 3;
	private static final String SELECT = "SELECT id, stock, colour, width, height FROM leftover WHERE used IS NULL "
			+ "ORDER BY width * height, id";

	private final Store store;

	/** @param store opened with {@link #AREA}; it stays open, and is closed by whoever opened it */
	public Leftovers(Store store) {
		this.store = store;
	}

	/** All that are still there, the smallest first. */
	public List<Leftover> atHand() throws StoreException {
		return store.read(connection -> Sql.list(connection, SELECT, Leftovers::leftover));
	}

	/**
	 * Keeps one more.
	 *
	 * @param stock  its id; null for none
	 * @param width  in mm, as is {@code height}; rounded down to what the store holds
	 * @throws IllegalArgumentException unless it has a size
	 */
	public Leftover keep(String stock, String colour, double width, double height) throws StoreException {
		BigDecimal w = size(width);
		BigDecimal h = size(height);
		return store.change(connection -> keep(connection, stock, colour, w, h));
	}

	/**
	 * The same within a transaction of somebody else's, in a store opened with {@link #AREA}.
	 *
	 * @param width in mm with three decimals at most, as is {@code height}
	 */
	public static Leftover keep(Connection connection, String stock, String colour, BigDecimal width, BigDecimal height)
			throws SQLException {
		// the used ones stay, so that no number is given twice
		long number = Sql.list(connection, "SELECT COUNT(*) AS c FROM leftover", row -> row.getLong("c")).get(0) + 1;
		Leftover kept = new Leftover("leftover-" + number, stock, colour, width.doubleValue(), height.doubleValue());
		Sql.update(connection, "INSERT INTO leftover (id, stock, colour, width, height, kept) VALUES (?, ?, ?, ?, ?, ?)",
				kept.id(), orEmpty(stock), orEmpty(colour), width, height, now());
		return kept;
	}

	/** Takes one away because it is used. @return whether it was still there */
	public boolean use(String id) throws StoreException {
		return store.change(connection -> use(connection, id));
	}

	/** The same within a transaction of somebody else's. */
	public static boolean use(Connection connection, String id) throws SQLException {
		return Sql.update(connection, "UPDATE leftover SET used = ? WHERE id = ? AND used IS NULL", now(), id) == 1;
	}

	/** Puts one back that was not used after all, within a transaction of somebody else's. @return whether it was used */
	public static boolean putBack(Connection connection, String id) throws SQLException {
		return Sql.update(connection, "UPDATE leftover SET used = NULL WHERE id = ? AND used IS NOT NULL", id) == 1;
	}

	private static Leftover leftover(ResultSet row) throws SQLException {
		return new Leftover(row.getString("id"), orNull(row.getString("stock")), orNull(row.getString("colour")),
				row.getBigDecimal("width").doubleValue(), row.getBigDecimal("height").doubleValue());
	}

	private static BigDecimal size(double mm) {
		if (!(mm > 0) || Double.isInfinite(mm)) {
			throw new IllegalArgumentException("a leftover of " + mm + " mm");
		}
		// what is a hair short by rounding is not made a thousandth shorter
		return BigDecimal.valueOf(mm + 1e-6).setScale(DECIMALS, RoundingMode.DOWN);
	}

	private static OffsetDateTime now() {
		return OffsetDateTime.now(ZoneOffset.UTC).truncatedTo(ChronoUnit.MICROS);
	}

	private static String orEmpty(String text) {
		return text == null ? "" : text;
	}

	private static String orNull(String text) {
		return text.isEmpty() ? null : text;
	}
}
