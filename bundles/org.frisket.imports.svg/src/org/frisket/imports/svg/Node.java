package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

import org.eclipse.osgi.util.NLS;

/** An element of the file, or a stretch of text between elements. */
final class Node {

	static final String[] NONE = {};

	/** The local name; empty for text, and for elements that are not SVG's. */
	private final String name;
	/** Names and values in turn; there are few, so that going through them is as fast as a map and takes less memory. */
	private final String[] attributes;
	private final String text;
	private final Node parent;
	private final int line;
	private final List<Node> children = new ArrayList<>(0);

	/** @param attributes names and values in turn; of equal names the first one holds */
	Node(String name, String[] attributes, Node parent, int line) {
		this(name, attributes, "", parent, line);
	}

	private Node(String name, String[] attributes, String text, Node parent, int line) {
		this.name = name;
		this.attributes = attributes;
		this.text = text;
		this.parent = parent;
		this.line = line;
	}

	static Node ofText(String text, Node parent, int line) {
		return new Node("", NONE, text, parent, line);
	}

	String name() {
		return name;
	}

	boolean is(String otherName) {
		return name.equals(otherName);
	}

	/** Null if there is none. Attributes of other namespaces are known by their local name, after those of none. */
	String attribute(String attribute) {
		for (int i = 0; i < attributes.length; i += 2) {
			if (attributes[i].equals(attribute)) {
				return attributes[i + 1];
			}
		}
		return null;
	}

	String attribute(String attribute, String otherwise) {
		String value = attribute(attribute);
		return value == null ? otherwise : value;
	}

	/** Names and values; of equal names the one that holds comes last. */
	void eachAttribute(BiConsumer<String, String> action) {
		for (int i = attributes.length - 2; i >= 0; i -= 2) {
			action.accept(attributes[i], attributes[i + 1]);
		}
	}

	/** Of a stretch of text. */
	String text() {
		return text;
	}

	/** Of all stretches of text in it. */
	String allText() {
		StringBuilder all = new StringBuilder(text);
		children.forEach(child -> all.append(child.allText()));
		return all.toString();
	}

	/** Null for the root. */
	Node parent() {
		return parent;
	}

	List<Node> children() {
		return children;
	}

	int line() {
		return line;
	}

	/** For messages. */
	String place() {
		String at = NLS.bind(Messages.place_line, line);
		String id = attribute("id");
		return id == null ? at : at + ", #" + id;
	}

	/** What a person calls it: a label, the title in it, or its id; empty if it has none. */
	String label() {
		String label = attribute("label");
		if (label != null && !label.isBlank()) {
			return label.strip();
		}
		for (Node child : children) {
			if (child.is("title") && !child.allText().isBlank()) {
				return child.allText().strip();
			}
		}
		return attribute("id", "").strip();
	}
}
