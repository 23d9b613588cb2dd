package org.frisket.ui.views.internal.properties;

/** One line of a form. */
interface Field {

	/** Shows the value again, unless another is being typed. */
	void refresh();

	/** Shows the value of another selection. */
	void reset();
}
