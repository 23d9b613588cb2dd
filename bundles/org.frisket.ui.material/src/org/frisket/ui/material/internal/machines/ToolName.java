package org.frisket.ui.material.internal.machines;

import org.frisket.material.tools.ToolKind;

/** What kinds of tools are called on the screen. */
public final class ToolName {

	private ToolName() {
	}

	public static String of(ToolKind kind) {
		return switch (kind) {
		case BLADE -> Messages.ToolName_blade;
		case CREASING_WHEEL -> Messages.ToolName_creasingWheel;
		case PERFORATING_BLADE -> Messages.ToolName_perforatingBlade;
		case PEN -> Messages.ToolName_pen;
		};
	}
}
