package org.frisket.orders.exchange;

import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Elements and attributes one after another, an element to a line. What XML cannot hold is left out of texts. */
final class TicketXml {

	private static final String NAMESPACE = "http://www.CIP4.org/JDFSchema_2_0";

	private final XMLStreamWriter xml;
	private int depth;
	/** Whether the element that is open has elements in it. */
	private boolean nested;

	TicketXml(OutputStream out, String root) throws XMLStreamException {
		xml = XMLOutputFactory.newInstance().createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
		xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
		xml.writeCharacters("\n");
		xml.writeStartElement(root);
		xml.writeDefaultNamespace(NAMESPACE);
		depth = 1;
	}

	/** @param attributes names and values in turn; what is empty is left out */
	TicketXml open(String name, String... attributes) throws XMLStreamException {
		line();
		xml.writeStartElement(name);
		depth++;
		nested = false;
		return with(attributes);
	}

	TicketXml with(String... attributes) throws XMLStreamException {
		for (int i = 0; i < attributes.length; i += 2) {
			if (!attributes[i + 1].isEmpty()) {
				xml.writeAttribute(attributes[i], clean(attributes[i + 1]));
			}
		}
		return this;
	}

	TicketXml text(String text) throws XMLStreamException {
		xml.writeCharacters(clean(text));
		return this;
	}

	TicketXml close() throws XMLStreamException {
		depth--;
		if (nested) {
			line();
		}
		xml.writeEndElement();
		nested = true;
		return this;
	}

	void end() throws XMLStreamException {
		close();
		xml.writeCharacters("\n");
		xml.writeEndDocument();
		xml.flush();
	}

	private void line() throws XMLStreamException {
		xml.writeCharacters("\n" + "\t".repeat(depth));
	}

	private static String clean(String text) {
		StringBuilder clean = new StringBuilder();
		text.codePoints().filter(c -> c == '\t' || c == '\n' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD
				|| c >= 0x10000).forEach(clean::appendCodePoint);
		return clean.toString();
	}
}
