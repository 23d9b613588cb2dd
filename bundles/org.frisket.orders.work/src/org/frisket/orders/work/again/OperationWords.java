package org.frisket.orders.work.again;

import org.frisket.model.OperationKind;

/** What operations are called in the user's language. */
final class OperationWords {

	private OperationWords() {
	}

	static String of(OperationKind kind) {
		return switch (kind) {
		case CUT -> Messages.Operation_cut;
		case KISS_CUT -> Messages.Operation_kissCut;
		case CREASE -> Messages.Operation_crease;
		case PERFORATE -> Messages.Operation_perforate;
		case DRAW -> Messages.Operation_draw;
		case PRINT -> Messages.Operation_print;
		};
	}
}
