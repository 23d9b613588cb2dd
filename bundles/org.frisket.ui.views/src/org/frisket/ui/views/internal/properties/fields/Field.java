package org.frisket.ui.views.internal.properties.fields;

/** One line of a form. */
public interface Field {

	/** Shows the value again, unless another is being typed. */
	void refresh();

	/** Shows the value of another selection. */
	void reset();
}
