package org.frisket.run;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.catalogue.GenericStocks;
import org.frisket.material.desk.DeskState;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.PerforatingBlade;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.StockFacts;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;

/**
 * A machine, and what the studio knows of tools, stock and settings.
 *
 * @param machine   that does the work
 * @param desk      what the studio knows
 * @param threshold corners that turn by less, in radians, are not swung round by a trailing blade
 */
public record Workshop(Machine machine, DeskState desk, double threshold) {

	/** In degrees: a corner of less is missed by no more than 0.05 mm with the usual offset of 0.25 mm, d sin φ. */
	static final double USUAL_THRESHOLD = 10;
	private static final String HEAVY = "heavy-";

	/** @throws IllegalArgumentException for a threshold that is no angle */
	public Workshop {
		if (!(threshold >= 0 && threshold <= Math.PI)) {
			throw new IllegalArgumentException("a threshold of " + threshold);
		}
	}

	public Workshop(Machine machine, DeskState desk) {
		this(machine, desk, Math.toRadians(USUAL_THRESHOLD));
	}

	/** Of a studio that has described nothing. */
	public static Workshop plain() {
		return new Workshop(Machine.plain(), DeskState.NOTHING);
	}

	/** With the machine most likely meant. */
	public static Workshop of(DeskState desk) {
		return new Workshop(desk.usualMachine().orElseGet(Machine::plain), desk);
	}

	/** The same with another threshold. @param radians of the turn from which on corners are swung round */
	public Workshop swingingFrom(double radians) {
		return new Workshop(machine, desk, radians);
	}

	/** Whether the machine is no particular one, so that nothing is known of where it ends. */
	public boolean isPlain() {
		return machine.id().equals(Machine.plain().id());
	}

	/** The tool an operation is done with. */
	public Tool tool(Operation operation) {
		OperationKind kind = operation.getKind();
		String named = named(operation);
		Tool tool = usual(kind, named);
		if (kind != OperationKind.PERFORATE || tool.id().equals(named)) {
			return tool;
		}
		if (isDashed(operation)) {
			// each dash is cut by itself: a toothed wheel would leave ties in it
			return usual(OperationKind.CUT, "");
		}
		// a plain blade would cut all the way
		return tool instanceof PerforatingBlade ? tool
				: desk.tools().stream().filter(PerforatingBlade.class::isInstance).findFirst()
						.orElseGet(() -> ToolOptions.usual(ToolKind.PERFORATING_BLADE));
	}

	static boolean isDashed(Operation operation) {
		return operation.getDash() > 0 && operation.getGap() > 0;
	}

	private Tool usual(OperationKind kind, String named) {
		return desk.usualTool(kind, named)
				.orElseGet(() -> ToolKind.usual(kind).map(ToolOptions::usual).or(() -> desk.toolsFor(kind).stream().findFirst())
						.orElseThrow(() -> new IllegalArgumentException("nothing works a " + kind)));
	}

	/** The tool an operation asks for; empty if it leaves it open. */
	static String named(Operation operation) {
		return operation.getTool() == null ? "" : operation.getTool();
	}

	/** All tools it may need. */
	public List<Tool> tools() {
		return desk.tools();
	}

	/** A stock of the shelf, or one of those that every studio meets. @param id may be null */
	public Optional<Stock> stock(String id) {
		return id == null ? Optional.empty()
				: desk.stock(id).or(() -> new GenericStocks().stocks().stream().filter(stock -> stock.id().equals(id)).findFirst());
	}

	/** Whether anything is known of a stock, be it no more than its family. @param id may be null */
	public boolean knows(String id) {
		return stock(id).isPresent() || family(id).isPresent();
	}

	/**
	 * What is known of a stock. One that nobody has described is taken for card, but for a plastic that nobody can name
	 * where the machine is hot, since that may be poisonous.
	 *
	 * @param id may be null
	 */
	public StockFacts facts(String id) {
		return stock(id).map(StockFacts::of).orElseGet(() -> StockFacts.of(family(id)
				.orElse(machine.process().isHot() ? StockFamily.OTHER : StockFamily.CARD), 0, 0));
	}

	/** Of the stocks that are called by their family. */
	private static Optional<StockFamily> family(String id) {
		if (id == null) {
			return Optional.empty();
		}
		String word = id.startsWith(HEAVY) ? id.substring(HEAVY.length()) : id;
		for (StockFamily family : StockFamily.values()) {
			if (family.name().toLowerCase(Locale.ROOT).equals(word)) {
				return Optional.of(family);
			}
		}
		return Optional.empty();
	}
}
