package org.frisket.typography.source;

import java.util.List;

/** No font of the asked name; the message suggests the nearest ones. */
public final class UnknownFontException extends Exception {

	private static final long serialVersionUID = 1;

	private final String wanted;
	private final transient List<String> suggestions;

	UnknownFontException(String wanted, List<String> suggestions) {
		super("No font called '" + wanted + "'" + (suggestions.isEmpty() ? "." : "; nearest: "
				+ String.join(", ", suggestions) + "."));
		this.wanted = wanted;
		this.suggestions = List.copyOf(suggestions);
	}

	public String wanted() {
		return wanted;
	}

	/** Names that can be found, the nearest first; may be empty. */
	public List<String> suggestions() {
		return suggestions == null ? List.of() : suggestions;
	}
}
