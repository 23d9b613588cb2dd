package org.frisket.export.names;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

/** How files are named: text with fields in braces, such as {@code {job}-{sheet}-{stock}}. */
public final class NamePattern {

	/** What is meant unless something else is said. */
	public static final String USUAL = "{job}-{sheet}-{stock}";

	/** Either text or a field. */
	private record Piece(String text, NameField field) {

		boolean parts() {
			return field == null && text.chars().allMatch(c -> " -_.,+".indexOf(c) >= 0);
		}
	}

	private final String text;
	private final List<Piece> pieces;

	private NamePattern(String text, List<Piece> pieces) {
		this.text = text;
		this.pieces = pieces;
	}

	/** @throws IllegalArgumentException if the text is no pattern; the message names the place and the reason */
	public static NamePattern parse(String text) {
		List<Piece> pieces = new ArrayList<>();
		int at = 0;
		while (at < text.length()) {
			if (text.charAt(at) == '{') {
				int end = text.indexOf('}', at);
				if (end < 0) {
					throw wrong(text, at, Messages.NamePattern_open);
				}
				pieces.add(new Piece(null, field(text, at, text.substring(at + 1, end))));
				at = end + 1;
			} else {
				int end = at;
				while (end < text.length() && text.charAt(end) != '{') {
					check(text, end++);
				}
				pieces.add(new Piece(text.substring(at, end), null));
				at = end;
			}
		}
		if (text.isBlank()) {
			throw new IllegalArgumentException(Messages.NamePattern_empty);
		}
		return new NamePattern(text, pieces);
	}

	private static NameField field(String text, int at, String word) {
		return NameField.of(word).orElseThrow(() -> wrong(text, at, NLS.bind(Messages.NamePattern_noField, word,
				Arrays.stream(NameField.values()).map(NameField::word).collect(Collectors.joining(", ")))));
	}

	private static void check(String text, int at) {
		char c = text.charAt(at);
		if (c == '}') {
			throw wrong(text, at, Messages.NamePattern_close);
		}
		if (FileNames.isForbidden(c)) {
			throw wrong(text, at, NLS.bind(Messages.NamePattern_forbidden, c));
		}
	}

	private static IllegalArgumentException wrong(String text, int at, String reason) {
		return new IllegalArgumentException(NLS.bind(Messages.NamePattern_wrong, new Object[] { text, at + 1, reason }));
	}

	public boolean has(NameField field) {
		return pieces.stream().anyMatch(piece -> piece.field() == field);
	}

	/**
	 * A name without an ending. A field that is empty takes the hyphen, dot or space before it along.
	 *
	 * @param values of the fields, as they are; missing ones are empty
	 * @throws IllegalArgumentException if it comes to nothing, or is too long
	 */
	String name(Map<NameField, String> values) {
		StringBuilder name = new StringBuilder();
		String parting = "";
		for (Piece piece : pieces) {
			if (piece.parts()) {
				parting = parting + piece.text();
				continue;
			}
			String shown = piece.field() == null ? piece.text() : FileNames.value(values.getOrDefault(piece.field(), ""));
			if (!shown.isEmpty()) {
				name.append(name.isEmpty() ? "" : parting).append(shown);
			}
			parting = "";
		}
		String whole = FileNames.whole(name.toString());
		if (whole.isEmpty()) {
			throw new IllegalArgumentException(NLS.bind(Messages.NamePattern_nothing, text));
		}
		if (FileNames.bytes(whole) > FileNames.LONGEST) {
			throw new IllegalArgumentException(NLS.bind(Messages.NamePattern_long,
					new Object[] { text, whole.codePointCount(0, whole.length()), FileNames.bytes(whole), FileNames.LONGEST }));
		}
		return whole;
	}

	@Override
	public String toString() {
		return text;
	}
}
