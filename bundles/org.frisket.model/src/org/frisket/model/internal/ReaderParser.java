package org.frisket.model.internal;

import java.io.IOException;

import javax.xml.parsers.SAXParser;

import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXNotRecognizedException;
import org.xml.sax.SAXNotSupportedException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/** A reader with its filters in the shape EMF asks for. */
final class ReaderParser extends SAXParser {

	private final XMLReader reader;

	ReaderParser(XMLReader reader) {
		this.reader = reader;
	}

	@Override
	public void parse(InputSource source, DefaultHandler handler) throws SAXException, IOException {
		reader.setContentHandler(handler);
		reader.setErrorHandler(handler);
		reader.parse(source);
	}

	@Override
	public XMLReader getXMLReader() {
		return reader;
	}

	@Override
	@Deprecated
	public org.xml.sax.Parser getParser() {
		throw new UnsupportedOperationException();
	}

	@Override
	public boolean isNamespaceAware() {
		return false;
	}

	@Override
	public boolean isValidating() {
		return false;
	}

	@Override
	public void setProperty(String name, Object value) throws SAXNotRecognizedException, SAXNotSupportedException {
		reader.setProperty(name, value);
	}

	@Override
	public Object getProperty(String name) throws SAXNotRecognizedException, SAXNotSupportedException {
		return reader.getProperty(name);
	}
}
