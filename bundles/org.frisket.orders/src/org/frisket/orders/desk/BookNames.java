package org.frisket.orders.desk;

import org.frisket.model.Stage;

/** What things are called on the screen; whatever is seen there can be searched for. */
public interface BookNames {

	/** In the user's language. */
	String stage(Stage stage);

	/** Of a stock by its id; the id itself where it is not known. */
	String stock(String id);
}
