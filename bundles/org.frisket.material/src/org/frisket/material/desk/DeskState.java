package org.frisket.material.desk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.material.Stock;
import org.frisket.material.advice.RulesOfThumb;
import org.frisket.material.advice.SettingsAdvisor;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.TestSheet;
import org.frisket.material.trials.Trial;
import org.frisket.model.OperationKind;

/**
 * What a studio knew at one time of its stock, machines, tools and settings.
 *
 * @param rules    of thumb that the studio has changed, as texts of their options
 * @param readOnly whether nothing can be kept, because the store must not be written to
 */
public record DeskState(List<Stock> stocks, List<Machine> machines, List<Tool> tools, Map<String, String> rules,
		List<Trial> trials, List<TestSheet> sheets, List<Run> runs, boolean readOnly) {

	/** Of a studio that has kept nothing yet. */
	public static final DeskState NOTHING = new DeskState(List.of(), List.of(), List.of(), Map.of(), List.of(), List.of(),
			List.of(), false);

	public DeskState {
		stocks = List.copyOf(stocks);
		machines = List.copyOf(machines);
		tools = List.copyOf(tools);
		rules = Map.copyOf(rules);
		trials = List.copyOf(trials);
		sheets = List.copyOf(sheets);
		runs = List.copyOf(runs);
	}

	/** The studio's machines, and the one that is no particular machine last. */
	public List<Machine> offeredMachines() {
		List<Machine> offered = new ArrayList<>(machines);
		offered.add(Machine.plain());
		return offered;
	}

	/** The machine of this id, be it the one that is no particular machine. */
	public Optional<Machine> machine(String id) {
		return offeredMachines().stream().filter(machine -> machine.id().equals(id)).findFirst();
	}

	/** The studio's tools for an operation; the usual one where it has described none. */
	public List<Tool> toolsFor(OperationKind operation) {
		List<Tool> able = tools.stream().filter(tool -> tool.operations().contains(operation)).toList();
		return able.isEmpty() ? ToolKind.usual(operation).map(ToolOptions::usual).map(List::of).orElse(List.of()) : able;
	}

	/** The tool of this id, be it a usual one that the studio has not described. */
	public Optional<Tool> tool(String id) {
		return tools.stream().filter(tool -> tool.id().equals(id)).findFirst()
				.or(() -> ToolKind.of(id).map(ToolOptions::usual));
	}

	public Optional<Stock> stock(String id) {
		return stocks.stream().filter(stock -> stock.id().equals(id)).findFirst();
	}

	/** Sheets of a stock, the latest first. */
	public List<TestSheet> sheetsOf(String stock) {
		return sheets.stream().filter(sheet -> sheet.stock().stock().equals(stock))
				.sorted((a, b) -> a.day().equals(b.day()) ? b.id().compareTo(a.id()) : b.day().compareTo(a.day())).toList();
	}

	/** Runs of a stock, the latest first. */
	public List<Run> runsOf(String stock) {
		return runs.stream().filter(run -> run.stock().stock().equals(stock))
				.sorted((a, b) -> b.at().compareTo(a.at())).toList();
	}

	/** The trials as they are if a sheet is as it is given here, kept or not. */
	public List<Trial> trialsWith(TestSheet sheet) {
		List<Trial> all = new ArrayList<>(trials.stream().filter(trial -> !trial.sheet().equals(sheet.id())).toList());
		all.addAll(sheet.trials());
		return all;
	}

	/** An advisor that knows these trials and the studio's rules of thumb. */
	public SettingsAdvisor advisor(Collection<Trial> known) {
		return new SettingsAdvisor(known, RulesOfThumb.of(rules));
	}
}
