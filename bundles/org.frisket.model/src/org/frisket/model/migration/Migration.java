package org.frisket.model.migration;

import org.xml.sax.helpers.XMLFilterImpl;

/** Turns a file of one version of the format into one of the next. The namespace itself is changed by the reader. */
public interface Migration {

	/** The version it reads; it makes the next one. */
	int from();

	/**
	 * A new filter for one file. The events carry qualified names only ({@code qName}); names of the format have no
	 * prefix, except for the root and in {@code xsi:type}.
	 */
	XMLFilterImpl filter();
}
