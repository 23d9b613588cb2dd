package org.frisket.orders.work;

import org.frisket.model.Stage;

/** What is done with the sheets of a run, in this order. */
public enum Step {

	PRINT(Stage.PRINTED), CUT(Stage.CUT);

	private final Stage stage;

	Step(Stage stage) {
		this.stage = stage;
	}

	/** Where a job stands once this is done with all of its pieces. */
	public Stage stage() {
		return stage;
	}
}
