package org.frisket.export.svg;

import java.io.IOException;
import java.io.InputStream;
import java.util.Set;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import org.frisket.model.ImageBytes;

/**
 * Whether an SVG may be put into another as it is: it consists of shapes and colours alone, so that there is nothing in it
 * that runs, moves, is fetched from elsewhere or looks otherwise on another desk, such as letters in a font.
 */
final class PlainDrawing {

	private static final String NAMESPACE = "http://www.w3.org/2000/svg";
	private static final Set<String> SHAPES = Set.of("svg", "g", "defs", "symbol", "use", "path", "rect", "circle",
			"ellipse", "line", "polyline", "polygon", "linearGradient", "radialGradient", "stop", "clipPath", "title", "desc");
	/** Of sides: what is stretched by less is not seen. */
	private static final double ALIKE = 1e-4;

	private PlainDrawing() {
	}

	/** @param ratio of its width to its height, as it is to be seen */
	static boolean isPlain(ImageBytes image, double ratio) {
		XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
		factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
		factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
		try (InputStream in = image.open()) {
			XMLStreamReader reader = factory.createXMLStreamReader(in);
			try {
				return isPlain(reader, ratio);
			} finally {
				reader.close();
			}
		} catch (XMLStreamException | IOException e) {
			// whatever it is, it is drawn for others
			return false;
		}
	}

	private static boolean isPlain(XMLStreamReader reader, double ratio) throws XMLStreamException {
		boolean root = true;
		while (reader.hasNext()) {
			switch (reader.next()) {
			case XMLStreamConstants.START_ELEMENT -> {
				if (root && !fills(reader.getAttributeValue(null, "viewBox"), ratio) || !isShape(reader)) {
					return false;
				}
				root = false;
			}
			case XMLStreamConstants.DTD, XMLStreamConstants.PROCESSING_INSTRUCTION, XMLStreamConstants.ENTITY_REFERENCE -> {
				return false;
			}
			default -> {
				// words that are not shown, and spaces
			}
			}
		}
		return !root;
	}

	/** Whether its view box is what is seen: not every reader knows the size of a drawing that has none. */
	private static boolean fills(String viewBox, double ratio) {
		String[] numbers = viewBox == null ? new String[0] : viewBox.strip().split("[\\s,]+");
		if (numbers.length != 4) {
			return false;
		}
		try {
			double own = Double.parseDouble(numbers[2]) / Double.parseDouble(numbers[3]);
			return Math.abs(own / ratio - 1) <= ALIKE;
		} catch (NumberFormatException e) {
			return false;
		}
	}

	private static boolean isShape(XMLStreamReader reader) {
		if (!NAMESPACE.equals(reader.getNamespaceURI()) || !SHAPES.contains(reader.getLocalName())) {
			return false;
		}
		for (int i = 0; i < reader.getAttributeCount(); i++) {
			if (!isHarmless(reader.getAttributeLocalName(i), reader.getAttributeValue(i).strip())) {
				return false;
			}
		}
		return true;
	}

	private static boolean isHarmless(String name, String value) {
		// a backslash may write any letter otherwise in a style
		return !name.startsWith("on") && !(name.equals("href") && !value.startsWith("#")) && value.indexOf('\\') < 0
				&& value.indexOf('@') < 0 && !value.replaceAll("url\\(\\s*[\"']?\\s*#", "").contains("url(");
	}
}
