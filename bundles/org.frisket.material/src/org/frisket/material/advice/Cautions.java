package org.frisket.material.advice;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.StockFamily;
import org.frisket.material.tools.Edge;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Process;
import org.frisket.material.tools.Tool;
import org.frisket.model.OperationKind;

/**
 * What to mind before a machine is run. That chlorinated plastic gives off hydrogen chloride in heat, and the manners at
 * knives and lasers, are from safety pages of universities; the rest is common practice, no source. In our own words.
 */
public final class Cautions {

	private Cautions() {
	}

	/** Those that hold for this work, the gravest first; the last is always to follow the maker's manual. */
	public static List<Caution> of(StockFamily family, Machine machine, Tool tool, OperationKind operation) {
		List<Caution> cautions = new ArrayList<>();
		if (machine.process().isHot()) {
			heat(family, machine.process(), cautions);
		} else if (operation == OperationKind.CUT || operation == OperationKind.KISS_CUT
				|| operation == OperationKind.PERFORATE) {
			cautions.add(new Caution("blade.hands", false, Messages.Cautions_hands));
			cautions.add(new Caution("blade.change", false, Messages.Cautions_change));
			tool.edge().ifPresent(edge -> wear(tool, edge, cautions));
		}
		cautions.add(new Caution("manual", false, Messages.Cautions_manual));
		return cautions;
	}

	/** Those that hold for a stock on whatever machine, the gravest first; the last is that its maker knows better. */
	public static List<Caution> of(StockFamily family) {
		List<Caution> cautions = new ArrayList<>();
		melting(family, cautions);
		cautions.add(new Caution("stock.manual", false, Messages.Cautions_stock));
		return cautions;
	}

	private static void melting(StockFamily family, List<Caution> cautions) {
		switch (family) {
		case FILM, OTHER -> cautions.add(new Caution("heat.fumes", true, Messages.Cautions_fumes));
		case FOAM, FABRIC, LABEL -> cautions.add(new Caution("heat.plastic", false, Messages.Cautions_plastic));
		case CARD, PAPER, BOARD -> {
			// what is said of every hot process is enough
		}
		}
	}

	private static void heat(StockFamily family, Process process, List<Caution> cautions) {
		melting(family, cautions);
		if (process == Process.LASER) {
			cautions.add(new Caution("laser.fire", false, Messages.Cautions_fire));
			cautions.add(new Caution("laser.eyes", false, Messages.Cautions_eyes));
		} else {
			cautions.add(new Caution("heat.burns", false, Messages.Cautions_burns));
		}
	}

	/** What an edge's wear asks for; nothing while it is sharp. */
	static void wear(Tool tool, Edge edge, List<Caution> cautions) {
		String message = switch (edge.state()) {
		case SHARP -> null;
		case NEARLY_DULL -> Messages.Cautions_nearlyDull;
		case DULL -> Messages.Cautions_dull;
		};
		if (message != null) {
			cautions.add(new Caution("blade.wear", false, NLS.bind(message, new Object[] { tool.name(),
					Measure.plain(edge.wornMetres(), 0), Measure.plain(edge.dullAfter(), 0) })));
		}
	}
}
