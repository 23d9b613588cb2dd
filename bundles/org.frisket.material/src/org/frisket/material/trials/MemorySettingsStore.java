package org.frisket.material.trials;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.frisket.material.tools.Edge;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;

/** Keeps all for as long as it lives itself. */
public final class MemorySettingsStore implements SettingsStore {

	static final Comparator<Trial> TRIALS = Comparator.comparing(Trial::day).thenComparing(Trial::id);

	private final Map<String, Tool> tools = new TreeMap<>();
	private final Map<String, Machine> machines = new TreeMap<>();
	private final Map<String, Trial> trials = new TreeMap<>();
	private final Map<String, TestSheet> sheets = new TreeMap<>();
	private final Map<String, Run> runs = new TreeMap<>();
	private Map<String, String> rules = Map.of();

	@Override
	public void save(Tool tool) {
		tools.put(tool.id(), tool);
	}

	@Override
	public Optional<Tool> tool(String id) {
		return Optional.ofNullable(tools.get(id));
	}

	@Override
	public List<Tool> tools() {
		return List.copyOf(tools.values());
	}

	@Override
	public boolean removeTool(String id) {
		return tools.remove(id) != null;
	}

	@Override
	public boolean removeMachine(String id) {
		return machines.remove(id) != null;
	}

	@Override
	public void save(Machine machine) {
		machines.put(machine.id(), machine);
	}

	@Override
	public Optional<Machine> machine(String id) {
		return Optional.ofNullable(machines.get(id));
	}

	@Override
	public List<Machine> machines() {
		return List.copyOf(machines.values());
	}

	@Override
	public Map<String, String> rules() {
		return rules;
	}

	@Override
	public void saveRules(Map<String, String> texts) {
		rules = Map.copyOf(texts);
	}

	@Override
	public void add(Trial trial) throws SQLException {
		if (trials.putIfAbsent(trial.id(), trial) != null) {
			throw new SQLException("there is a trial " + trial.id());
		}
	}

	@Override
	public List<Trial> trials() {
		return withSheets(trials.values(), sheets.values());
	}

	static List<Trial> withSheets(Iterable<Trial> single, Iterable<TestSheet> sheets) {
		List<Trial> all = new ArrayList<>();
		single.forEach(all::add);
		sheets.forEach(sheet -> all.addAll(sheet.trials()));
		all.sort(TRIALS);
		return all;
	}

	@Override
	public void save(TestSheet sheet) {
		sheets.put(sheet.id(), sheet);
	}

	@Override
	public Optional<TestSheet> sheet(String id) {
		return Optional.ofNullable(sheets.get(id));
	}

	@Override
	public List<TestSheet> sheets() {
		return List.copyOf(sheets.values());
	}

	@Override
	public void add(Run run) throws SQLException {
		if (runs.putIfAbsent(run.id(), run) != null) {
			throw new SQLException("there is a run " + run.id());
		}
		tools.computeIfPresent(run.setup().tool(), (id, tool) -> worn(tool, run));
	}

	private static Tool worn(Tool tool, Run run) {
		return tool.edge().map(edge -> edge.after(run.metres(), run.stock().abrasion())).map((Edge edge) -> tool.withEdge(edge))
				.orElse(tool);
	}

	@Override
	public List<Run> runs() {
		return runs.values().stream().sorted(Comparator.comparing(Run::at).thenComparing(Run::id)).toList();
	}
}
