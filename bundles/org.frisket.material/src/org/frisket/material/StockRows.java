package org.frisket.material;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

import org.frisket.material.sizes.Format;
import org.frisket.material.weights.BasisWeight;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.Thickness;
import org.frisket.studio.NameKey;
import org.frisket.studio.store.Sql;

/** Stock as rows of the tables {@code stock} and {@code stock_size}. */
final class StockRows {

	static final long FIRST_REVISION = 1;

	private static final String COLUMNS = "name, name_key, description, family, grammage, pounds, grade, caliper, "
			+ "caliper_source, colour, finish, grain, price, currency, on_hand, low_water, abrasion, notes, changed";
	private static final String INSERT = "INSERT INTO stock (" + COLUMNS + ", revision, id) VALUES ("
			+ "?, ".repeat(COLUMNS.split(",").length) + "?, ?)";
	private static final String UPDATE = "UPDATE stock SET " + COLUMNS.replace(",", " = ?,")
			+ " = ?, revision = revision + 1 WHERE id = ?";
	private static final String SELECT = "SELECT " + COLUMNS + ", revision, id FROM stock";
	private static final String SIZES = "SELECT stock, form, width, height FROM stock_size";
	private static final String INSERT_SIZE = "INSERT INTO stock_size (stock, place, form, width, height) "
			+ "VALUES (?, ?, ?, ?, ?)";
	private static final String DELETE_SIZES = "DELETE FROM stock_size WHERE stock = ?";
	private static final String SHEET = "SHEET";
	private static final String ROLL = "ROLL";

	private StockRows() {
	}

	static List<ShelvedStock> list(Connection connection) throws SQLException {
		Map<String, List<Format>> sizes = new HashMap<>();
		Sql.list(connection, SIZES + " ORDER BY stock, place",
				row -> sizes.computeIfAbsent(row.getString("stock"), id -> new ArrayList<>()).add(size(row)));
		return Sql.list(connection, SELECT + " ORDER BY name_key", row -> stock(row, sizes));
	}

	static Optional<ShelvedStock> find(Connection connection, String id) throws SQLException {
		Map<String, List<Format>> sizes = Map.of(id,
				Sql.list(connection, SIZES + " WHERE stock = ? ORDER BY place", StockRows::size, id));
		return Sql.first(connection, SELECT + " WHERE id = ?", row -> stock(row, sizes), id);
	}

	static Optional<String> idOfName(Connection connection, String name) throws SQLException {
		return Sql.first(connection, "SELECT id FROM stock WHERE name_key = ?", row -> row.getString(1),
				NameKey.of(name));
	}

	static Set<String> ids(Connection connection) throws SQLException {
		return new TreeSet<>(Sql.list(connection, "SELECT id FROM stock", row -> row.getString(1)));
	}

	/** The keys of the names of those whose ids match. */
	static Set<String> nameKeys(Connection connection, Predicate<String> ids) throws SQLException {
		Set<String> keys = new HashSet<>();
		Sql.list(connection, "SELECT id, name_key FROM stock",
				row -> ids.test(row.getString(1)) && keys.add(row.getString(2)));
		return keys;
	}

	/** The revisions of all, by id. */
	static Map<String, Long> revisions(Connection connection) throws SQLException {
		Map<String, Long> revisions = new HashMap<>();
		Sql.list(connection, "SELECT id, revision FROM stock", row -> revisions.put(row.getString(1), row.getLong(2)));
		return revisions;
	}

	static void insert(Connection connection, Collection<Stock> stocks) throws SQLException {
		insertShelved(connection, stocks.stream().map(stock -> new ShelvedStock(stock, FIRST_REVISION)).toList());
	}

	static void insertShelved(Connection connection, Collection<ShelvedStock> stocks) throws SQLException {
		Sql.updateAll(connection, INSERT, stocks.stream()
				.map(each -> with(values(each.stock()), each.revision(), each.stock().id()))::iterator);
		insertSizes(connection, stocks.stream().map(ShelvedStock::stock).toList());
	}

	/** Whatever revisions are there. Names may change places among them. */
	static void replace(Connection connection, Collection<Stock> stocks) throws SQLException {
		Sql.updateAll(connection, "UPDATE stock SET name_key = ? WHERE id = ?",
				stocks.stream().map(stock -> new Object[] { "\u0001" + stock.id(), stock.id() })::iterator);
		Sql.updateAll(connection, UPDATE, stocks.stream().map(stock -> with(values(stock), stock.id()))::iterator);
		Sql.updateAll(connection, DELETE_SIZES, stocks.stream().map(stock -> new Object[] { stock.id() })::iterator);
		insertSizes(connection, stocks);
	}

	/** Answers false if that revision is no longer there. */
	static boolean update(Connection connection, Stock stock, long revision) throws SQLException {
		if (Sql.update(connection, UPDATE + " AND revision = ?", with(values(stock), stock.id(), revision)) == 0) {
			return false;
		}
		Sql.update(connection, DELETE_SIZES, stock.id());
		insertSizes(connection, List.of(stock));
		return true;
	}

	static void delete(Connection connection, String id) throws SQLException {
		Sql.update(connection, "DELETE FROM stock WHERE id = ?", id);
	}

	private static void insertSizes(Connection connection, Collection<Stock> stocks) throws SQLException {
		List<Object[]> rows = new ArrayList<>();
		for (Stock stock : stocks) {
			for (int place = 0; place < stock.sizes().size(); place++) {
				rows.add(values(stock.id(), place, stock.sizes().get(place)));
			}
		}
		Sql.updateAll(connection, INSERT_SIZE, rows);
	}

	private static Object[] values(String stock, int place, Format size) {
		if (size instanceof Format.Sheet sheet) {
			return new Object[] { stock, place, SHEET, sheet.width(), sheet.height() };
		}
		return new Object[] { stock, place, ROLL, size.width(), ((Format.Roll) size).length() };
	}

	private static List<Object> values(Stock stock) {
		OffsetDateTime now = OffsetDateTime.now(ZoneOffset.UTC).truncatedTo(ChronoUnit.SECONDS);
		return List.of(stock.name(), NameKey.of(stock.name()), stock.description(), stock.family(),
				stock.statedGrammage(), stock.basisWeight().map(BasisWeight::pounds),
				stock.basisWeight().map(weight -> weight.grade().name()),
				stock.statedCaliper().map(caliper -> caliper.thickness().mm()),
				stock.statedCaliper().map(caliper -> caliper.source().name()), stock.colour(), stock.finish(),
				stock.grain(), stock.price().map(Price::amount),
				stock.price().map(price -> price.currency().getCurrencyCode()), stock.onHand(), stock.lowWater(),
				stock.abrasion(), stock.notes(), now);
	}

	private static Object[] with(List<Object> values, Object... more) {
		List<Object> all = new ArrayList<>(values);
		all.addAll(List.of(more));
		return all.toArray();
	}

	private static ShelvedStock stock(ResultSet row, Map<String, List<Format>> sizes) throws SQLException {
		String id = row.getString("id");
		BigDecimal caliper = row.getBigDecimal("caliper");
		String grade = row.getString("grade");
		String currency = row.getString("currency");
		Stock stock = Stock.named(row.getString("name")).id(id).description(row.getString("description"))
				.family(StockFamily.valueOf(row.getString("family"))).grammage(row.getBigDecimal("grammage"))
				.pounds(row.getBigDecimal("pounds")).grade(grade == null ? null : Grade.valueOf(grade))
				.caliper(caliper == null ? null : new Thickness(caliper))
				.caliperSource(caliper == null ? null : Caliper.Source.valueOf(row.getString("caliper_source")))
				.colour(row.getString("colour")).finish(Finish.valueOf(row.getString("finish")))
				.grain(Grain.valueOf(row.getString("grain"))).sizes(sizes.getOrDefault(id, List.of()))
				.price(row.getBigDecimal("price")).currency(currency == null ? null : Price.currency(currency))
				.onHand(row.getBigDecimal("on_hand")).lowWater(row.getBigDecimal("low_water"))
				.abrasion(row.getBigDecimal("abrasion")).notes(row.getString("notes")).build();
		return new ShelvedStock(stock, row.getLong("revision"));
	}

	private static Format size(ResultSet row) throws SQLException {
		BigDecimal height = row.getBigDecimal("height");
		return SHEET.equals(row.getString("form")) ? new Format.Sheet(row.getBigDecimal("width"), height)
				: new Format.Roll(row.getBigDecimal("width"), Optional.ofNullable(height));
	}
}
