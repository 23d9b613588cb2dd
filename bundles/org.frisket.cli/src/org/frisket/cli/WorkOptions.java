package org.frisket.cli;

import java.sql.SQLException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.frisket.material.StockFamily;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.SettingsStore;
import org.frisket.material.trials.Setup;
import org.frisket.material.trials.StockFacts;
import org.frisket.model.OperationKind;

import picocli.CommandLine.Option;

/** What is worked, how, and with what. */
final class WorkOptions {

	@Option(names = { "--family", "--stock-family" }, required = true, paramLabel = "FAMILY", description = "Kind of stock: card, paper, label, film, fabric, board, foam or other.")
	private StockFamily family;

	@Option(names = "--grammage", paramLabel = "G/M2", defaultValue = "0", description = "Its weight in g/m².")
	private double grammage;

	@Option(names = "--caliper", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Its thickness, such as 0.3mm.")
	private Double caliper;

	@Option(names = "--stock", paramLabel = "ID", defaultValue = "", description = "Its id, if it is one of the studio's.")
	private String stock;

	@Option(names = "--abrasion", paramLabel = "FACTOR", defaultValue = "1", description = "How fast it dulls a blade; 1 for plain card.")
	private double abrasion;

	@Option(names = "--operation", paramLabel = "KIND", defaultValue = "cut", description = "cut, kissCut, crease, perforate or draw (default ${DEFAULT-VALUE}).")
	private String operation;

	@Option(names = "--tool", paramLabel = "ID", description = "One of the studio's tools (default a usual one for the operation).")
	private String tool;

	@Option(names = "--machine", paramLabel = "ID", description = "One of the studio's machines (default one with settings in percent).")
	private String machine;

	StockFacts stock() throws Refusal {
		try {
			return new StockFacts(stock, family, grammage, caliper == null ? 0 : caliper, abrasion);
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	OperationKind operation() throws Refusal {
		return Arrays.stream(OperationKind.values()).filter(kind -> kind != OperationKind.PRINT)
				.filter(kind -> kind.getLiteral().equalsIgnoreCase(operation.replace("-", ""))).findFirst()
				.orElseThrow(() -> new Refusal("--operation: “" + operation + "” is not one of "
						+ Arrays.stream(OperationKind.values()).filter(kind -> kind != OperationKind.PRINT)
								.map(OperationKind::getLiteral).collect(Collectors.joining(", "))));
	}

	Tool tool(SettingsStore settings) throws SQLException, Refusal {
		ToolKind usual = ToolKind.usual(operation()).orElseThrow();
		if (tool == null) {
			return ToolOptions.usual(usual);
		}
		Optional<Tool> kept = settings.tool(tool);
		return kept.or(() -> tool.equals(usual.word()) ? Optional.of(ToolOptions.usual(usual)) : Optional.empty())
				.orElseThrow(() -> new Refusal("--tool: the studio has no tool “" + tool
						+ "”; see frisket settings tool list"));
	}

	Machine machine(SettingsStore settings) throws SQLException, Refusal {
		return machine(settings, machine);
	}

	static Machine machine(SettingsStore settings, String id) throws SQLException, Refusal {
		if (id == null || id.equals(Machine.plain().id())) {
			return Machine.plain();
		}
		return settings.machine(id).orElseThrow(() -> new Refusal(
				"--machine: the studio has no machine “" + id + "”; see frisket settings machine list"));
	}

	Setup setup(SettingsStore settings) throws SQLException, Refusal {
		Tool with = tool(settings);
		if (!with.operations().contains(operation())) {
			throw new Refusal("--tool: " + with.name() + " cannot " + operation().getLiteral().toLowerCase(Locale.ROOT));
		}
		return new Setup(machine(settings).id(), with.id(), operation());
	}
}
