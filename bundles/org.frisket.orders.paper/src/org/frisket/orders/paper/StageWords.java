package org.frisket.orders.paper;

import org.frisket.model.Stage;

/** What stages are called, in the user's language. */
public final class StageWords {

	private StageWords() {
	}

	public static String of(Stage stage) {
		return switch (stage) {
		case ENQUIRY -> Messages.StageWords_enquiry;
		case ORDERED -> Messages.StageWords_ordered;
		case DESIGNED -> Messages.StageWords_designed;
		case APPROVED -> Messages.StageWords_approved;
		case PRINTED -> Messages.StageWords_printed;
		case CUT -> Messages.StageWords_cut;
		case FINISHED -> Messages.StageWords_finished;
		case DELIVERED -> Messages.StageWords_delivered;
		case ON_HOLD -> Messages.StageWords_onHold;
		case CANCELLED -> Messages.StageWords_cancelled;
		};
	}
}
