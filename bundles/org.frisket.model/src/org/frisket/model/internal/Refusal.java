package org.frisket.model.internal;

import org.xml.sax.Locator;
import org.xml.sax.SAXParseException;

/** What is wrong with a file, in words for its owner, and where. */
final class Refusal extends SAXParseException {

	private static final long serialVersionUID = 1L;

	Refusal(String reason, Locator place) {
		super(reason, place);
	}
}
