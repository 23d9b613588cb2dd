package org.frisket.run;

import java.util.List;

import org.frisket.material.desk.DeskState;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;

/**
 * A machine, and what the studio knows of tools, stock and settings.
 *
 * @param machine that does the work
 * @param desk    what the studio knows
 */
public record Workshop(Machine machine, DeskState desk) {

	/** Of a studio that has described nothing. */
	public static Workshop plain() {
		return new Workshop(Machine.plain(), DeskState.NOTHING);
	}

	/** With the machine most likely meant. */
	public static Workshop of(DeskState desk) {
		return new Workshop(desk.usualMachine().orElseGet(Machine::plain), desk);
	}

	/** The tool an operation is done with. */
	public Tool tool(Operation operation) {
		OperationKind kind = operation.getKind();
		String named = operation.getTool() == null ? "" : operation.getTool();
		return desk.usualTool(kind, named)
				.orElseGet(() -> ToolKind.usual(kind).map(ToolOptions::usual).or(() -> desk.toolsFor(kind).stream().findFirst())
						.orElseThrow(() -> new IllegalArgumentException("nothing works a " + kind)));
	}

	/** All tools it may need. */
	public List<Tool> tools() {
		return desk.tools();
	}
}
