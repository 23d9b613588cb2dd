package org.frisket.ui.views.internal;

import java.util.Collection;
import java.util.stream.Collectors;

import org.frisket.model.OperationKind;

/** What operations are called on the screen. */
public final class OperationText {

	private OperationText() {
	}

	public static String of(OperationKind kind) {
		return switch (kind) {
		case CUT -> Messages.OperationText_cut;
		case KISS_CUT -> Messages.OperationText_kissCut;
		case CREASE -> Messages.OperationText_crease;
		case PERFORATE -> Messages.OperationText_perforate;
		case DRAW -> Messages.OperationText_draw;
		case PRINT -> Messages.OperationText_print;
		};
	}

	/** Several, one after the other. */
	public static String of(Collection<OperationKind> kinds) {
		return kinds.stream().map(OperationText::of).collect(Collectors.joining(", ")); //$NON-NLS-1$
	}
}
