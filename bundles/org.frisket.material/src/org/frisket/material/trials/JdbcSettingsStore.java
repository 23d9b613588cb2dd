package org.frisket.material.trials;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.studio.store.Sql;

/**
 * Keeps all in the tables of the scripts in {@code migrations}, in standard SQL. The connection is lent: it is neither
 * committed nor closed here, so that several calls can be one transaction.
 */
public final class JdbcSettingsStore implements SettingsStore {

	private static final String FACTS = "stock, family, grammage, caliper, abrasion, machine, tool, operation, exposure,"
			+ " pressure, speed, passes";
	private static final String FACT_PLACES = "?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?";

	private final Connection connection;
	private final ToolTables tables;

	public JdbcSettingsStore(Connection connection) {
		this.connection = connection;
		tables = new ToolTables(connection);
	}

	@Override
	public void save(Tool tool) throws SQLException {
		tables.save(tool);
	}

	@Override
	public Optional<Tool> tool(String id) throws SQLException {
		return tables.tool(id);
	}

	@Override
	public List<Tool> tools() throws SQLException {
		return tables.tools();
	}

	@Override
	public boolean removeTool(String id) throws SQLException {
		return tables.removeTool(id);
	}

	@Override
	public boolean removeMachine(String id) throws SQLException {
		return tables.removeMachine(id);
	}

	@Override
	public void save(Machine machine) throws SQLException {
		tables.save(machine);
	}

	@Override
	public Optional<Machine> machine(String id) throws SQLException {
		return tables.machine(id);
	}

	@Override
	public List<Machine> machines() throws SQLException {
		return tables.machines();
	}

	@Override
	public Map<String, String> rules() throws SQLException {
		return tables.rules();
	}

	@Override
	public void saveRules(Map<String, String> rules) throws SQLException {
		tables.saveRules(rules);
	}

	@Override
	public void add(Trial trial) throws SQLException {
		Sql.update(connection,
				"INSERT INTO settings_trial (id, made_on, " + FACTS + ", verdict, wear) VALUES (?, ?, " + FACT_PLACES
				+ ", ?, ?)", trial.id(), trial.day(), Facts.of(trial.stock(), trial.setup(), trial.settings()),
				trial.verdict().name(), trial.wear());
	}

	@Override
	public List<Trial> trials() throws SQLException {
		List<Trial> single = Sql.list(connection,
				"SELECT id, made_on, " + FACTS + ", verdict, wear FROM settings_trial", row -> {
			Facts facts = Facts.read(row, 3);
			return new Trial(row.getString(1), row.getObject(2, LocalDate.class), facts.stock(), facts.setup(),
					facts.settings(), Verdict.valueOf(row.getString(3 + Facts.COLUMNS)),
					row.getDouble(4 + Facts.COLUMNS), "");
		});
		return MemorySettingsStore.withSheets(single, sheets());
	}

	@Override
	public void save(TestSheet sheet) throws SQLException {
		// verdicts go with their sheet
		Sql.update(connection, "DELETE FROM settings_sheet WHERE id = ?", sheet.id());
		Sql.update(connection,
				"INSERT INTO settings_sheet (id, made_on, " + FACTS + ", wear, sweep_across, sweep_down) VALUES (?, ?, "
				+ FACT_PLACES + ", ?, ?, ?)", sheet.id(), sheet.day(),
				Facts.of(sheet.stock(), sheet.setup(), sheet.base()), sheet.wear(), sheet.across().text(),
				sheet.down().text());
		for (Map.Entry<CellPlace, Verdict> cell : sheet.verdicts().entrySet()) {
			Sql.update(connection, "INSERT INTO settings_sheet_cell (sheet, cell, verdict) VALUES (?, ?, ?)", sheet.id(),
					cell.getKey().toString(), cell.getValue().name());
		}
	}

	@Override
	public Optional<TestSheet> sheet(String id) throws SQLException {
		List<TestSheet> found = sheets(" WHERE id = ?", " WHERE sheet = ?", id);
		return found.stream().findFirst();
	}

	@Override
	public List<TestSheet> sheets() throws SQLException {
		return sheets("", "");
	}

	private record Cell(String sheet, String place, Verdict verdict) {
	}

	private List<TestSheet> sheets(String which, String whichCells, Object... parameters) throws SQLException {
		Map<String, Map<String, Verdict>> verdicts = new TreeMap<>();
		for (Cell cell : Sql.list(connection, "SELECT sheet, cell, verdict FROM settings_sheet_cell" + whichCells,
				row -> new Cell(row.getString(1), row.getString(2), Verdict.valueOf(row.getString(3))), parameters)) {
			verdicts.computeIfAbsent(cell.sheet(), sheet -> new TreeMap<>()).put(cell.place(), cell.verdict());
		}
		List<TestSheet> bare = Sql.list(connection, "SELECT id, made_on, " + FACTS
				+ ", wear, sweep_across, sweep_down FROM settings_sheet" + which + " ORDER BY id", row -> {
					Facts facts = Facts.read(row, 3);
					return new TestSheet(row.getString(1), row.getObject(2, LocalDate.class), facts.stock(),
							facts.setup(), facts.settings(), Sweep.parse(row.getString(4 + Facts.COLUMNS)),
							Sweep.parse(row.getString(5 + Facts.COLUMNS)), row.getDouble(3 + Facts.COLUMNS),
							new TreeMap<>());
				}, parameters);
		return bare.stream().map(sheet -> sheet.with(places(sheet, verdicts.getOrDefault(sheet.id(), Map.of()))))
				.toList();
	}

	private static SortedMap<CellPlace, Verdict> places(TestSheet sheet, Map<String, Verdict> named) {
		SortedMap<CellPlace, Verdict> places = new TreeMap<>();
		named.forEach((place, verdict) -> places.put(sheet.place(place), verdict));
		return places;
	}

	@Override
	public void add(Run run) throws SQLException {
		Sql.update(connection,
				"INSERT INTO settings_run (id, made_at, job, " + FACTS + ", verdict, metres, remark) VALUES (?, ?, ?, "
				+ FACT_PLACES + ", ?, ?, ?)", run.id(), OffsetDateTime.ofInstant(run.at(), ZoneOffset.UTC), run.job(),
				Facts.of(run.stock(), run.setup(), run.settings()), run.verdict().name(), run.metres(), run.remark());
		tables.wear(run.setup().tool(), run.metres() * run.stock().abrasion());
	}

	@Override
	public List<Run> runs() throws SQLException {
		return Sql.list(connection, "SELECT id, made_at, job, " + FACTS
				+ ", verdict, metres, remark FROM settings_run ORDER BY made_at, id", row -> {
					Facts facts = Facts.read(row, 4);
					Instant at = row.getObject(2, OffsetDateTime.class).toInstant();
					return new Run(row.getString(1), at, row.getString(3), facts.stock(), facts.setup(),
							facts.settings(), Verdict.valueOf(row.getString(4 + Facts.COLUMNS)),
							row.getDouble(5 + Facts.COLUMNS), row.getString(6 + Facts.COLUMNS));
				});
	}
}
