package org.frisket.export.machine;

import java.text.Normalizer;

/** Texts for machines that know nothing but ASCII. */
public final class Ascii {

	private Ascii() {
	}

	/** Letters without their accents; what ASCII has no likeness of becomes a question mark, a control character a space. */
	public static String of(String text) {
		StringBuilder plain = new StringBuilder(text.length());
		Normalizer.normalize(text.replace("ß", "ss"), Normalizer.Form.NFKD).codePoints()
				.filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
				.forEach(c -> plain.append(c < 0x20 || c == 0x7f ? ' ' : c < 0x7f ? (char) c : likeness(c)));
		return plain.toString();
	}

	private static char likeness(int c) {
		return switch (c) {
		case '‘', '’', '‚', '“', '”', '„', '«', '»' -> '\'';
		case '–', '—', '−', '‐' -> '-';
		case '×' -> 'x';
		default -> Character.isSpaceChar(c) ? ' ' : '?';
		};
	}
}
