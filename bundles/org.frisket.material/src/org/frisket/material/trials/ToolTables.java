package org.frisket.material.trials;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.frisket.material.tools.Edge;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.studio.store.Sql;

/** Tools, machines and rules as the texts of their options. */
final class ToolTables {

	private static final String WORN = "worn";

	private final Connection connection;

	ToolTables(Connection connection) {
		this.connection = connection;
	}

	/** What an edge has gone through, in a column of its own so that two desks can count at once. */
	private static Double worn(Tool tool) {
		return tool.edge().map(Edge::wornMetres).orElse(null);
	}

	void save(Tool tool) throws SQLException {
		Sql.update(connection, "DELETE FROM settings_tool WHERE id = ?", tool.id());
		Double worn = worn(tool);
		if (worn == null) {
			Sql.update(connection, "INSERT INTO settings_tool (id, kind) VALUES (?, ?)", tool.id(), tool.kind().name());
		} else {
			Sql.update(connection, "INSERT INTO settings_tool (id, kind, worn) VALUES (?, ?, ?)", tool.id(),
					tool.kind().name(), worn);
		}
		Map<String, String> texts = new LinkedHashMap<>(ToolOptions.texts(tool));
		texts.remove(WORN);
		saveTexts("INSERT INTO settings_tool_text (tool, name, setting) VALUES (?, ?, ?)", tool.id(), texts);
	}

	private record Kept(String id, ToolKind kind, Double worn) {
	}

	Optional<Tool> tool(String id) throws SQLException {
		return tools(" WHERE id = ?", " WHERE tool = ?", id).stream().findFirst();
	}

	List<Tool> tools() throws SQLException {
		return tools("", "");
	}

	private List<Tool> tools(String which, String whichTexts, Object... parameters) throws SQLException {
		Map<String, Map<String, String>> texts = texts("SELECT tool, name, setting FROM settings_tool_text" + whichTexts,
				parameters);
		List<Tool> tools = new ArrayList<>();
		for (Kept kept : Sql.list(connection, "SELECT id, kind, worn FROM settings_tool" + which + " ORDER BY id", row -> {
			double worn = row.getDouble(3);
			return new Kept(row.getString(1), ToolKind.valueOf(row.getString(2)), row.wasNull() ? null : worn);
		}, parameters)) {
			Tool tool = ToolOptions.tool(kept.kind(), kept.id(), texts.getOrDefault(kept.id(), Map.of()));
			tools.add(tool.edge().isEmpty() || kept.worn() == null ? tool
					: tool.withEdge(new Edge(kept.worn(), tool.edge().get().dullAfter())));
		}
		return tools;
	}

	/** Its texts go with it. */
	boolean removeTool(String id) throws SQLException {
		return Sql.update(connection, "DELETE FROM settings_tool WHERE id = ?", id) > 0;
	}

	/** Its texts go with it. */
	boolean removeMachine(String id) throws SQLException {
		return Sql.update(connection, "DELETE FROM settings_machine WHERE id = ?", id) > 0;
	}

	/** A tool without an edge has no number to add to, and keeps none. */
	void wear(String tool, double metres) throws SQLException {
		Sql.update(connection, "UPDATE settings_tool SET worn = worn + ? WHERE id = ?", metres, tool);
	}

	void save(Machine machine) throws SQLException {
		Sql.update(connection, "DELETE FROM settings_machine WHERE id = ?", machine.id());
		Sql.update(connection, "INSERT INTO settings_machine (id) VALUES (?)", machine.id());
		saveTexts("INSERT INTO settings_machine_text (machine, name, setting) VALUES (?, ?, ?)", machine.id(),
				MachineOptions.texts(machine));
	}

	Optional<Machine> machine(String id) throws SQLException {
		return machines(" WHERE id = ?", " WHERE machine = ?", id).stream().findFirst();
	}

	List<Machine> machines() throws SQLException {
		return machines("", "");
	}

	private List<Machine> machines(String which, String whichTexts, Object... parameters) throws SQLException {
		Map<String, Map<String, String>> texts = texts(
				"SELECT machine, name, setting FROM settings_machine_text" + whichTexts, parameters);
		return Sql.list(connection, "SELECT id FROM settings_machine" + which + " ORDER BY id", row -> MachineOptions
				.machine(row.getString(1), texts.getOrDefault(row.getString(1), Map.of())), parameters);
	}

	Map<String, String> rules() throws SQLException {
		return texts("SELECT '', name, setting FROM settings_rule").getOrDefault("", Map.of());
	}

	void saveRules(Map<String, String> rules) throws SQLException {
		Sql.update(connection, "DELETE FROM settings_rule");
		for (Map.Entry<String, String> rule : rules.entrySet()) {
			Sql.update(connection, "INSERT INTO settings_rule (name, setting) VALUES (?, ?)", rule.getKey(),
					rule.getValue());
		}
	}

	private void saveTexts(String insert, String owner, Map<String, String> texts) throws SQLException {
		for (Map.Entry<String, String> text : texts.entrySet()) {
			Sql.update(connection, insert, owner, text.getKey(), text.getValue());
		}
	}

	private record Text(String owner, String name, String setting) {
	}

	/** By owner and name. */
	private Map<String, Map<String, String>> texts(String select, Object... parameters) throws SQLException {
		Map<String, Map<String, String>> texts = new TreeMap<>();
		for (Text text : Sql.list(connection, select, row -> new Text(row.getString(1), row.getString(2), row.getString(3)),
				parameters)) {
			texts.computeIfAbsent(text.owner(), owner -> new TreeMap<>()).put(text.name(), text.setting());
		}
		return texts;
	}
}
