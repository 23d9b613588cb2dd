package org.frisket.imports.svg;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.imports.UnreadableArtException;

/** How much a file may draw. Elements that use each other again and again may grow beyond all measure. */
final class Budget {

	/** Used ones are counted again, here and below. */
	static final int MOST_ELEMENTS = 500_000;
	/** Characters. Path data is measured before it is read: the memory that curves take is up to thirty times that. */
	static final int MOST_PATH_DATA = 16 << 20;
	/** Of all shapes that come out, letters and outlines of lines among them; some 150 bytes each. */
	static final int MOST_NODES = 4_000_000;

	private final String file;
	private final Monitor monitor;
	private int elements;
	private long pathData;
	private long nodes;

	Budget(String file, Monitor monitor) {
		this.file = file;
		this.monitor = monitor;
	}

	/** One element is drawn. */
	void element(Node node) throws UnreadableArtException {
		monitor.check();
		if (++elements > MOST_ELEMENTS) {
			throw refused(node, NLS.bind(Messages.Budget_elements, MOST_ELEMENTS));
		}
	}

	/** @param data may be null */
	void pathData(Node node, String data) throws UnreadableArtException {
		pathData += data == null ? 0 : data.length();
		if (pathData > MOST_PATH_DATA) {
			throw refused(node, NLS.bind(Messages.Budget_pathData, MOST_PATH_DATA >> 20));
		}
	}

	/** An outline comes out. */
	Outline outline(Node node, Outline outline) throws UnreadableArtException {
		nodes(node, outline.nodeCount());
		return outline;
	}

	/** Outlines of so many nodes come out. */
	void nodes(Node node, long count) throws UnreadableArtException {
		nodes += count;
		if (nodes > MOST_NODES) {
			throw refused(node, NLS.bind(Messages.Budget_nodes, MOST_NODES / 1_000_000));
		}
	}

	private UnreadableArtException refused(Node node, String reason) {
		return new UnreadableArtException(file, node.place(), reason);
	}
}
