package org.frisket.ui.sheets.internal.run;

import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolOptions;
import org.frisket.ui.material.internal.machines.ToolName;

/** What the tools of a run are called. */
final class ToolWords {

	private ToolWords() {
	}

	/** One that the studio has not described is called by its kind. */
	static String of(Tool tool) {
		return tool.equals(ToolOptions.usual(tool.kind())) || tool.name().isBlank() ? ToolName.of(tool.kind()) : tool.name();
	}
}
