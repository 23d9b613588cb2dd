package org.frisket.imports.svg;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.imports.ImportSource;
import org.frisket.imports.LargestFile;
import org.frisket.imports.UnreadableArtException;
import org.frisket.print.picture.SealedXml;

/**
 * Reads a file into a tree. It opens nothing else: document types are passed over, entities of their own are refused.
 * Size, count and depth are bounded, and so is the memory that the tree takes: about three times that of the file.
 */
final class TreeReader {

	static final int MOST_ELEMENTS = 1_000_000;
	static final int DEEPEST = 1_000;

	private static final String SVG = "http://www.w3.org/2000/svg";

	private final ImportSource source;
	private final Monitor monitor;

	TreeReader(ImportSource source, Monitor monitor) {
		this.source = source;
		this.monitor = monitor;
	}

	/** The root. */
	Node read() throws IOException, UnreadableArtException {
		try (InputStream in = LargestFile.openUnpacked(source)) {
			XMLStreamReader reader = factory().createXMLStreamReader(in);
			try {
				return tree(reader);
			} finally {
				reader.close();
			}
		} catch (XMLStreamException e) {
			int line = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
			throw new UnreadableArtException(source.name(), line > 0 ? NLS.bind(Messages.place_line, line) : "",
					NLS.bind(Messages.TreeReader_xml, SealedXml.reason(e)), e);
		}
	}

	private static XMLInputFactory factory() {
		XMLInputFactory factory = SealedXml.factory();
		factory.setProperty(XMLInputFactory.IS_COALESCING, true);
		return factory;
	}

	private Node tree(XMLStreamReader reader) throws XMLStreamException, UnreadableArtException {
		Node root = null;
		Node current = null;
		int count = 0;
		int depth = 0;
		// names come again and again
		Map<String, String> known = new HashMap<>();
		while (reader.hasNext()) {
			switch (reader.next()) {
			case XMLStreamConstants.START_ELEMENT -> {
				int line = reader.getLocation().getLineNumber();
				monitor.check();
				if (++count > MOST_ELEMENTS) {
					throw failure(line, NLS.bind(Messages.TreeReader_many, MOST_ELEMENTS));
				}
				if (++depth > DEEPEST) {
					throw failure(line, NLS.bind(Messages.TreeReader_deep, DEEPEST));
				}
				Node node = new Node(name(reader, known), attributes(reader, known), current, line);
				if (current != null) {
					current.children().add(node);
				} else if (!node.is("svg")) {
					throw failure(line, Messages.TreeReader_noRoot);
				} else {
					root = node;
				}
				current = node;
			}
			case XMLStreamConstants.END_ELEMENT -> {
				depth--;
				current = current.parent();
			}
			case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
				if (current != null && holdsText(current)) {
					current.children().add(Node.ofText(reader.getText(), current, reader.getLocation().getLineNumber()));
				}
			}
			default -> {
				// comments, instructions, document type
			}
			}
		}
		return root;
	}

	/** Files without a namespace are taken for SVG if their root is called so. */
	private static String name(XMLStreamReader reader, Map<String, String> known) {
		String namespace = reader.getNamespaceURI();
		boolean own = namespace == null || namespace.isEmpty() || namespace.equals(SVG);
		return own ? known.computeIfAbsent(reader.getLocalName(), name -> name) : "";
	}

	/** Those of no namespace first, for they hold. */
	private static String[] attributes(XMLStreamReader reader, Map<String, String> known) {
		int count = reader.getAttributeCount();
		String[] attributes = count == 0 ? Node.NONE : new String[2 * count];
		int front = 0;
		for (int i = 0; i < count; i++) {
			front += isForeign(reader, i) ? 0 : 2;
		}
		int back = front;
		front = 0;
		for (int i = 0; i < count; i++) {
			int at = isForeign(reader, i) ? back : front;
			attributes[at] = known.computeIfAbsent(reader.getAttributeLocalName(i), local -> local);
			attributes[at + 1] = reader.getAttributeValue(i);
			if (at == back) {
				back += 2;
			} else {
				front += 2;
			}
		}
		return attributes;
	}

	private static boolean isForeign(XMLStreamReader reader, int attribute) {
		String namespace = reader.getAttributeNamespace(attribute);
		return namespace != null && !namespace.isEmpty();
	}

	private static boolean holdsText(Node node) {
		return switch (node.name()) {
		case "text", "tspan", "a", "textPath", "style", "title" -> true;
		default -> false;
		};
	}

	private UnreadableArtException failure(int line, String reason) {
		return new UnreadableArtException(source.name(), NLS.bind(Messages.place_line, line), reason);
	}
}
