package org.frisket.model.internal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.OptionalInt;

import org.frisket.model.migration.Migrations;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/** Looks at the first element of a file only: is it a job, and of which version? */
final class RootCheck extends DefaultHandler {

	/** Leaves the parser once the root is seen. */
	private static final class Seen extends SAXException {

		private static final long serialVersionUID = 1L;
	}

	private Locator locator;
	private int version;

	private RootCheck() {
	}

	/** The version of the job in the file; {@link Refusal} if it holds none that can be read. */
	static int version(byte[] content) throws SAXException, IOException {
		RootCheck check = new RootCheck();
		XMLReader reader = Xml.reader();
		reader.setContentHandler(check);
		reader.setErrorHandler(check);
		try {
			reader.parse(new InputSource(new ByteArrayInputStream(content)));
		} catch (Seen e) {
			return check.version;
		}
		throw new IllegalStateException("a document without an element");
	}

	@Override
	public void setDocumentLocator(Locator place) {
		locator = place;
	}

	@Override
	public void startElement(String uri, String localName, String qName, Attributes attributes) throws SAXException {
		String namespace = Xml.declaredNamespace(qName, attributes);
		OptionalInt found = namespace == null ? OptionalInt.empty() : Migrations.version(namespace);
		if (found.isEmpty() || !Xml.unprefixed(qName).equals("Job")) {
			throw new Refusal("this is not a job file: it starts with <" + qName + ">", locator);
		}
		version = found.getAsInt();
		if (version > Migrations.currentVersion()) {
			throw new Refusal("this job was written by a newer Frisket (file format " + version
					+ "; this one reads up to " + Migrations.currentVersion() + ")", locator);
		}
		throw new Seen();
	}
}
