package org.frisket.print.internal.drawn;

import java.io.ByteArrayInputStream;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import org.eclipse.osgi.util.NLS;
import org.frisket.print.picture.SealedXml;

/**
 * One look through an SVG before anything is built of it: whether it is sound, how large it is, and what it asks for that is
 * not given. Document types are passed over, entities of their own are refused, nothing else is opened.
 */
final class SvgScan {

	static final int MOST_ELEMENTS = 100_000;
	static final int DEEPEST = 100;

	private static final String NAMESPACE = "http://www.w3.org/2000/svg";
	private static final Set<String> MOVING = Set.of("animate", "animatecolor", "animatemotion", "animatetransform", "set");
	/** An address in a style. */
	private static final Pattern ADDRESS = Pattern.compile("(?:url\\(|@import)\\s*[\"']?\\s*([^\"')\\s;]*)",
			Pattern.CASE_INSENSITIVE);

	private final Set<String> outside = new TreeSet<>();
	private SvgSize size;
	private boolean text;
	private boolean foreign;
	private boolean moving;
	private int elements;

	private SvgScan() {
	}

	static SvgScan of(byte[] file) throws ArtException {
		SvgScan scan = new SvgScan();
		try {
			XMLStreamReader reader = SealedXml.factory().createXMLStreamReader(new ByteArrayInputStream(file));
			try {
				scan.read(reader);
			} finally {
				reader.close();
			}
		} catch (XMLStreamException e) {
			throw new ArtException(NLS.bind(Messages.SvgScan_xml, e.getLocation() == null ? 1 : e.getLocation().getLineNumber(),
					SealedXml.reason(e)), e);
		}
		return scan;
	}

	private void read(XMLStreamReader reader) throws XMLStreamException, ArtException {
		int depth = 0;
		boolean style = false;
		while (reader.hasNext()) {
			switch (reader.next()) {
			case XMLStreamConstants.START_ELEMENT -> {
				int line = reader.getLocation().getLineNumber();
				if (++elements > MOST_ELEMENTS) {
					throw new ArtException(NLS.bind(Messages.SvgScan_many, line, MOST_ELEMENTS));
				} else if (++depth > DEEPEST) {
					throw new ArtException(NLS.bind(Messages.SvgScan_deep, line, DEEPEST));
				}
				element(reader);
				style = reader.getLocalName().equals("style");
			}
			case XMLStreamConstants.END_ELEMENT -> {
				depth--;
				style = false;
			}
			case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
				if (style) {
					addresses(reader.getText());
				}
			}
			case XMLStreamConstants.PROCESSING_INSTRUCTION -> {
				if (reader.getPITarget().equals("xml-stylesheet")) {
					outside.add(reader.getPITarget());
				}
			}
			case XMLStreamConstants.ENTITY_REFERENCE ->
				throw new ArtException(NLS.bind(Messages.SvgScan_entity, reader.getLocation().getLineNumber(),
						reader.getLocalName()));
			default -> {
				// comments, document type
			}
			}
		}
	}

	private void element(XMLStreamReader reader) throws ArtException {
		String space = reader.getNamespaceURI();
		boolean own = space == null || space.isEmpty() || space.equals(NAMESPACE);
		String name = own ? reader.getLocalName().toLowerCase(Locale.ROOT) : "";
		if (size == null) {
			if (!name.equals("svg")) {
				throw new ArtException(NLS.bind(Messages.SvgScan_root, reader.getLocalName()));
			}
			size = SvgSize.of(reader.getAttributeValue(null, "width"), reader.getAttributeValue(null, "height"),
					reader.getAttributeValue(null, "viewBox"));
		}
		text |= name.equals("text");
		foreign |= name.equals("foreignobject");
		moving |= MOVING.contains(name);
		for (int i = 0; i < reader.getAttributeCount(); i++) {
			String value = reader.getAttributeValue(i);
			if (!reader.getAttributeLocalName(i).equals("href")) {
				addresses(value);
			} else if (own && !name.equals("a")) {
				address(value);
			}
		}
	}

	private void addresses(String style) {
		if (style.indexOf('(') >= 0 || style.indexOf('@') >= 0) {
			for (Matcher matcher = ADDRESS.matcher(style); matcher.find();) {
				address(matcher.group(1));
			}
		}
	}

	private void address(String address) {
		String plain = address.strip();
		if (!plain.isEmpty() && !plain.startsWith("#") && !plain.regionMatches(true, 0, "data:", 0, 5)) {
			outside.add(plain);
		}
	}

	SvgSize size() {
		return size;
	}

	/** What it refers to outside of itself, in order of the alphabet. */
	Set<String> outside() {
		return outside;
	}

	boolean hasText() {
		return text;
	}

	/** Whether there is content of another language that is not drawn. */
	boolean hasForeign() {
		return foreign;
	}

	boolean isMoving() {
		return moving;
	}
}
