package org.frisket.imports.svg;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.imports.Remarks;

/** What elements mean by addresses of the form {@code #id}, and which of those they are in the midst of. */
final class Addresses {

	private static final int SHOWN = 60;

	private final Remarks remarks;
	private final Map<String, Node> ids = new HashMap<>();
	private final Set<Node> entered = new HashSet<>();

	Addresses(Node root, Remarks remarks) {
		this.remarks = remarks;
		collect(root);
	}

	private void collect(Node node) {
		String id = node.attribute("id");
		if (id != null) {
			ids.putIfAbsent(id, node);
		}
		node.children().forEach(this::collect);
	}

	/** Null, and told, if it is not in the file. */
	Node target(Node from, String address) {
		String text = address.strip();
		if (!text.startsWith("#")) {
			remote(from, text);
			return null;
		}
		Node target = ids.get(text.substring(1));
		if (target == null) {
			remarks.once(from.place(), NLS.bind(Messages.Addresses_noTarget, text));
		}
		return target;
	}

	/** Tells that what has the address is left out. */
	void remote(Node from, String address) {
		String shown = address.length() > SHOWN ? address.substring(0, SHOWN) + "…" : address;
		remarks.once(from.place(), NLS.bind(Messages.Addresses_remote, shown));
	}

	/** Tells that what the element means is not a path. */
	void noPath(Node from) {
		remarks.once(from.place(), NLS.bind(Messages.Addresses_noPath, from.attribute("href", "").strip()));
	}

	/** @return false if it is entered already: it would use itself */
	boolean enter(Node target) {
		return entered.add(target);
	}

	void leave(Node target) {
		entered.remove(target);
	}
}
