package org.frisket.cli.settings;

import java.sql.SQLException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
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

	@Option(names = { "--family", "--stock-family" }, paramLabel = "FAMILY", description = "Kind of stock: card, paper, label, film, fabric, board, foam or other; needed unless --stock is on the shelf.")
	private StockFamily family;

	@Option(names = "--grammage", paramLabel = "G/M2", description = "Its weight in g/m² (default that of the stock on the shelf).")
	private Double grammage;

	@Option(names = "--caliper", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Its thickness, such as 0.3mm (default that of the stock on the shelf).")
	private Double caliper;

	@Option(names = "--stock", paramLabel = "ID", defaultValue = "", description = "Its id, if it is one of the studio's.")
	private String stock;

	@Option(names = "--abrasion", paramLabel = "FACTOR", description = "How fast it dulls a blade; 1 for plain card (default that of the stock on the shelf).")
	private Double abrasion;

	@Option(names = "--operation", paramLabel = "KIND", defaultValue = "cut", description = "cut, kissCut, crease, perforate or draw (default ${DEFAULT-VALUE}).")
	private String operation;

	@Option(names = "--tool", paramLabel = "ID", description = "One of the studio's tools (default a usual one for the operation).")
	private String tool;

	@Option(names = "--machine", paramLabel = "ID", description = "One of the studio's machines (default one with settings in percent).")
	private String machine;

	/** Of g/m² and of wear: what is beyond it is a slip of the finger. */
	private static final int MOST = 9_999;

	/** Looked up once. */
	private StockFacts facts;

	/**
	 * What is known of the stock: as the options say, else as it is on the shelf. To be asked for once before the
	 * settings are opened, since the shelf lies in the same store.
	 */
	StockFacts stock() throws Refusal {
		if (facts == null) {
			try {
				Optional<StockFacts> shelved = stock.isEmpty() ? Optional.empty()
						: SettingsDesk.shelved(stock).map(StockFacts::of);
				facts = facts(shelved);
			} catch (IllegalArgumentException e) {
				throw new Refusal(e);
			}
		}
		return facts;
	}

	private StockFacts facts(Optional<StockFacts> shelved) throws Refusal {
		if (family == null && shelved.isEmpty()) {
			throw new Refusal(stock.isEmpty() ? "--family: say which kind of stock, or with --stock which one of the shelf"
					: "--stock: there is no “" + stock + "” on the shelf; say its kind with --family");
		}
		requireMeasure("--grammage", grammage);
		requireMeasure("--abrasion", abrasion);
		return new StockFacts(stock, family != null ? family : shelved.get().family(),
				grammage != null ? grammage : shelved.map(StockFacts::grammage).orElse(0.0),
				caliper != null ? caliper : shelved.map(StockFacts::caliperMm).orElse(0.0),
				abrasion != null ? abrasion : shelved.map(StockFacts::abrasion).orElse(1.0));
	}

	private static void requireMeasure(String option, Double value) throws Refusal {
		if (value != null && !(value >= 0 && value <= MOST)) {
			throw new Refusal("%s: %s is not between 0 and %d".formatted(option, value, MOST));
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
