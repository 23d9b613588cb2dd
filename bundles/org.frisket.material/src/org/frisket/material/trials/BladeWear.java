package org.frisket.material.trials;

import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.tools.Edge;
import org.frisket.material.tools.Tool;

/** Whether an edge will last for a piece of work. */
public final class BladeWear {

	private BladeWear() {
	}

	/**
	 * What to say before the work; empty if the edge lasts, or the tool has none.
	 *
	 * @param metres   of cut that lie ahead, all passes counted
	 * @param abrasion of the stock
	 */
	public static Optional<String> warning(Tool tool, double metres, double abrasion) {
		return tool.edge().flatMap(edge -> message(edge, edge.after(metres, abrasion)).map(message -> NLS.bind(message,
				new Object[] { tool.name(), whole(edge.wornMetres()), whole(edge.dullAfter()) })));
	}

	private static Optional<String> message(Edge now, Edge then) {
		if (now.state() == Edge.State.DULL) {
			return Optional.of(Messages.BladeWear_dull);
		}
		if (then.state() == Edge.State.DULL) {
			return Optional.of(Messages.BladeWear_within);
		}
		return now.state() == Edge.State.NEARLY_DULL ? Optional.of(Messages.BladeWear_nearlyDull) : Optional.empty();
	}

	private static String whole(double metres) {
		return Sweep.plain(Math.rint(metres));
	}
}
