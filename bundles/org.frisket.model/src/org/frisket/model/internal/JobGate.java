package org.frisket.model.internal;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.frisket.model.Ids;
import org.frisket.model.impl.FrisketPackageImpl;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.XMLFilterImpl;

/**
 * The last filter before the model: refuses what a job file must not hold and what the model would drop or stumble
 * over. Later, places are lost; here each refusal knows its own.
 */
final class JobGate extends XMLFilterImpl {

	private static final int DEEPEST = 64;
	private static final String ELEMENTS = "elements";

	private final Map<String, Integer> lineById = new HashMap<>();
	private Locator locator;
	private int depth;

	/** Where the element with this id starts; 0 if it was not met. */
	int lineOf(String id) {
		return lineById.getOrDefault(id, 0);
	}

	@Override
	public void setDocumentLocator(Locator place) {
		locator = place;
		super.setDocumentLocator(place);
	}

	@Override
	public void startElement(String uri, String localName, String qName, Attributes attributes) throws SAXException {
		if (++depth > DEEPEST) {
			throw new Refusal("more than " + DEEPEST + " elements are nested in each other", locator);
		}
		for (int i = 0; i < attributes.getLength(); i++) {
			refuseOutside(Xml.unprefixed(attributes.getQName(i)));
		}
		if (depth == 1 || depth == 2 && qName.equals("layers") || depth == 3 && qName.equals(ELEMENTS)
				|| qName.equals("groups")) {
			checkId(attributes.getValue("id"));
		}
		if (depth == 3 && qName.equals(ELEMENTS)) {
			checkType(attributes.getValue("xsi:type"));
		}
		super.startElement(uri, localName, qName, attributes);
	}

	@Override
	public void endElement(String uri, String localName, String qName) throws SAXException {
		depth--;
		super.endElement(uri, localName, qName);
	}

	private void refuseOutside(String attribute) throws Refusal {
		if (attribute.equals("href") || attribute.equals("schemaLocation")
				|| attribute.equals("noNamespaceSchemaLocation")) {
			throw new Refusal("it refers to something outside the file (" + attribute + ")", locator);
		}
	}

	private void checkId(String id) throws Refusal {
		if (id == null) {
			return;
		}
		if (!Ids.valid(id)) {
			throw new Refusal("'" + id + "' cannot be an id", locator);
		}
		Integer before = lineById.put(id, locator.getLineNumber());
		if (before != null) {
			throw new Refusal("the id '" + id + "' was already given in line " + before, locator);
		}
	}

	private void checkType(String type) throws Refusal {
		if (type == null) {
			throw new Refusal("an element does not say what it is (xsi:type)", locator);
		}
		EClassifier known = FrisketPackageImpl.eINSTANCE.getEClassifier(Xml.unprefixed(type));
		EClass element = FrisketPackageImpl.Literals.ELEMENT;
		if (!(known instanceof EClass kind) || kind.isAbstract() || !element.isSuperTypeOf(kind)) {
			throw new Refusal("an element is a '" + type + "', which this Frisket does not know; "
					+ "the job may have been written by a newer one", locator);
		}
	}
}
