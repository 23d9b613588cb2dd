package org.frisket.ui.bench.internal.looks;

import org.frisket.model.OperationKind;

/** The word for each operation, as labels and legends write it. */
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
}
