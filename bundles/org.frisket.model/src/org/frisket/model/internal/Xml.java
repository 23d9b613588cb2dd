package org.frisket.model.internal;

import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;

import org.frisket.model.impl.FrisketPackageImpl;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.AttributesImpl;
import org.xml.sax.helpers.XMLFilterImpl;

/** The parser of job files, and what its users share. */
final class Xml {

	private Xml() {
	}

	/** A parser without namespaces, document types, entities and anything outside the file. */
	static XMLReader reader() {
		try {
			// The JDK's own, whatever other parser an installation may bring.
			SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
			factory.setNamespaceAware(false);
			factory.setValidating(false);
			factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
			factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
			factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
			factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
			factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
			return factory.newSAXParser().getXMLReader();
		} catch (ParserConfigurationException | SAXException e) {
			throw new IllegalStateException("the Java runtime has no safe XML parser", e);
		}
	}

	static String prefix(String qName) {
		int colon = qName.indexOf(':');
		return colon < 0 ? "" : qName.substring(0, colon);
	}

	static String unprefixed(String qName) {
		return qName.substring(qName.indexOf(':') + 1);
	}

	/** The namespace an element's own name is in, by the declarations it carries itself; null if none. */
	static String declaredNamespace(String qName, Attributes attributes) {
		String prefix = prefix(qName);
		return attributes.getValue(prefix.isEmpty() ? "xmlns" : "xmlns:" + prefix);
	}

	/** Puts the current namespace in the place of an older one. */
	static XMLFilterImpl renamespace(String older) {
		return new XMLFilterImpl() {

			@Override
			public void startElement(String uri, String localName, String qName, Attributes attributes)
					throws SAXException {
				AttributesImpl changed = new AttributesImpl(attributes);
				for (int i = 0; i < changed.getLength(); i++) {
					String name = changed.getQName(i);
					if ((name.equals("xmlns") || name.startsWith("xmlns:")) && changed.getValue(i).equals(older)) {
						changed.setValue(i, FrisketPackageImpl.eNS_URI);
					}
				}
				super.startElement(uri, localName, qName, changed);
			}
		};
	}
}
