package org.frisket.studio.store;

import java.sql.SQLException;

import org.eclipse.osgi.util.NLS;

/**
 * What every database keeps: text of whole characters, none of which is NUL. H2 keeps others too, but they would be lost
 * on the way to a server.
 */
final class KeepableText {

	/** Of the SQL standard: a character that is not in the repertoire. */
	static final String STATE = "22021";

	private static final int SHOWN = 40;

	private KeepableText() {
	}

	/** @throws SQLException with {@link #STATE} and a message for people, if it cannot be kept */
	static void check(String text) throws SQLException {
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
				i++;
			} else if (c == 0 || Character.isSurrogate(c)) {
				throw new SQLException(NLS.bind(Messages.Store_character,
						new Object[] { "U+%04X".formatted((int) c), i + 1, shown(text) }), STATE);
			}
		}
	}

	/** The beginning, without what cannot be shown. */
	private static String shown(String text) {
		return text.codePoints().limit(SHOWN).map(c -> Character.isISOControl(c) || c >= Character.MIN_SURROGATE
				&& c <= Character.MAX_SURROGATE ? '\uFFFD' : c)
				.collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
	}
}
