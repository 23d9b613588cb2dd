package org.frisket.orders;

import org.frisket.model.Stage;

/**
 * A job about to go to another stage.
 *
 * @param entry  as it is
 * @param stood  where it stands in the line from enquiry to delivery, or stood when it was put on hold or cancelled
 * @param to     where it is to go
 * @param remark why, or empty
 * @param proof  whether a proof of it was made
 */
public record StageStep(Entry entry, Stage stood, Stage to, String remark, boolean proof) {

	/** Whether a stage is none of the line from enquiry to delivery. */
	public static boolean isAside(Stage stage) {
		return stage == Stage.ON_HOLD || stage == Stage.CANCELLED;
	}

	/** Whether it comes to a stage, or goes past it, from before it. */
	public boolean reaches(Stage stage) {
		return !isAside(to) && stood.compareTo(stage) < 0 && to.compareTo(stage) >= 0;
	}

	/** Whether it goes back in the line. */
	public boolean isBack() {
		return !isAside(to) && to.compareTo(stood) < 0;
	}
}
