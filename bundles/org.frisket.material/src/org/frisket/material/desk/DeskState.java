package org.frisket.material.desk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.frisket.material.Stock;
import org.frisket.material.advice.RulesOfThumb;
import org.frisket.material.advice.SettingsAdvisor;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.Setup;
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

	/** The machine that is most likely meant: that of the latest run, else the only one there is. */
	public Optional<Machine> usualMachine() {
		return latest(run -> true).flatMap(run -> machines.stream().filter(each -> each.id().equals(run.setup().machine()))
				.findFirst()).or(() -> machines.size() == 1 ? Optional.of(machines.get(0)) : Optional.empty());
	}

	/**
	 * The studio's tool that is most likely meant for an operation: the named one if it can do it, else that of the latest
	 * run, else the only one there is.
	 *
	 * @param named id of a tool; empty for none
	 */
	public Optional<Tool> usualTool(OperationKind operation, String named) {
		List<Tool> able = tools.stream().filter(tool -> tool.operations().contains(operation)).toList();
		return able.stream().filter(tool -> tool.id().equals(named)).findFirst()
				.or(() -> latest(run -> run.setup().operation() == operation).flatMap(run -> able.stream()
						.filter(tool -> tool.id().equals(run.setup().tool())).findFirst()))
				.or(() -> able.size() == 1 ? Optional.of(able.get(0)) : Optional.empty());
	}

	private Optional<Run> latest(Predicate<Run> fits) {
		return runs.stream().filter(fits).max(Comparator.comparing(Run::at).thenComparing(Run::id));
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

	/** Whether a machine of the studio has this id, or had it when something was tried or run with it. */
	public boolean hadMachine(String id) {
		return machine(id).isPresent() || setups().anyMatch(setup -> setup.machine().equals(id));
	}

	/** Whether a tool of the studio has this id, or had it when something was tried or run with it. */
	public boolean hadTool(String id) {
		return tools.stream().anyMatch(tool -> tool.id().equals(id)) || setups().anyMatch(setup -> setup.tool().equals(id));
	}

	private Stream<Setup> setups() {
		return Stream.of(trials.stream().map(Trial::setup), sheets.stream().map(TestSheet::setup),
				runs.stream().map(Run::setup)).flatMap(each -> each);
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
