package org.frisket.print.picture;

import java.io.InputStream;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;

/** How drawings in XML are read: nothing but the file itself is ever opened, whatever its document type says. */
public final class SealedXml {

	private static final String TOLD = "Message: ";

	private SealedXml() {
	}

	public static XMLInputFactory factory() {
		XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
		factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
		factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
		factory.setXMLResolver((publicId, systemId, base, namespace) -> InputStream.nullInputStream());
		return factory;
	}

	/** Why a file cannot be read. The parser's own words come with the place in front, which is told anyway. */
	public static String reason(XMLStreamException e) {
		String message = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
		int told = message.indexOf(TOLD);
		return (told < 0 ? message : message.substring(told + TOLD.length())).strip();
	}
}
