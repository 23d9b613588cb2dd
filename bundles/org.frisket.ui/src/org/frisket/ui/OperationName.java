package org.frisket.ui;

import java.util.Collection;
import java.util.stream.Collectors;

import org.frisket.model.OperationKind;

/** What operations are called on the screen. */
public final class OperationName {

	private OperationName() {
	}

	public static String of(OperationKind kind) {
		return switch (kind) {
		case CUT -> Messages.OperationName_cut;
		case KISS_CUT -> Messages.OperationName_kissCut;
		case CREASE -> Messages.OperationName_crease;
		case PERFORATE -> Messages.OperationName_perforate;
		case DRAW -> Messages.OperationName_draw;
		case PRINT -> Messages.OperationName_print;
		};
	}

	/** Several, one after the other. */
	public static String of(Collection<OperationKind> kinds) {
		return kinds.stream().map(OperationName::of).collect(Collectors.joining(", ")); //$NON-NLS-1$
	}
}
