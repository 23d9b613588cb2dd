package org.frisket.model.migration;

import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.AttributesImpl;
import org.xml.sax.helpers.XMLFilterImpl;

/** A filter for migrations that change attributes only. */
public abstract class AttributeRewriter extends XMLFilterImpl {

	/**
	 * Changes the attributes of one element in place.
	 *
	 * @param name the element's name without a prefix
	 * @param type its {@code xsi:type} without a prefix; empty if it has none
	 */
	protected abstract void rewrite(String name, String type, AttributesImpl attributes);

	@Override
	public final void startElement(String uri, String localName, String qName, Attributes attributes)
			throws SAXException {
		AttributesImpl changed = new AttributesImpl(attributes);
		String type = attributes.getValue("xsi:type");
		rewrite(unprefixed(qName), type == null ? "" : unprefixed(type), changed);
		super.startElement(uri, localName, qName, changed);
	}

	/** Gives an attribute another name, if it is there. */
	protected static void rename(AttributesImpl attributes, String from, String to) {
		int index = attributes.getIndex(from);
		if (index >= 0) {
			attributes.setQName(index, to);
		}
	}

	/** Gives an attribute another value, if it has the one named. */
	protected static void replace(AttributesImpl attributes, String name, String from, String to) {
		int index = attributes.getIndex(name);
		if (index >= 0 && attributes.getValue(index).equals(from)) {
			attributes.setValue(index, to);
		}
	}

	private static String unprefixed(String name) {
		return name.substring(name.indexOf(':') + 1);
	}
}
