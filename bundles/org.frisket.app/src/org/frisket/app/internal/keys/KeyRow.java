package org.frisket.app.internal.keys;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A command as the list shows it.
 *
 * @param command     its name, with what it is told
 * @param description what it does; may be empty
 * @param keys        as they are written on this system; empty if it has none
 * @param where       in what part of the screen the keys hold; empty if it has none
 */
record KeyRow(String command, String description, String keys, String where) {

	/**
	 * Whether each word asked for begins a word of the command or of its description, or is part of its keys. Keys that
	 * are held may be asked for in any order.
	 */
	boolean answers(String query) {
		String name = plain(command);
		String about = plain(description);
		return Stream.of(plain(query).strip().split("\\s+")) //$NON-NLS-1$
				.allMatch(word -> word.isEmpty() || begins(name, word) || begins(about, word) || isPressed(word));
	}

	private boolean isPressed(String word) {
		List<List<String>> strokes = Stream.of(plain(keys).split(" ")).map(KeyRow::parts).toList(); //$NON-NLS-1$
		return !keys.isEmpty() && strokes.stream().anyMatch(stroke -> stroke.containsAll(parts(word)));
	}

	private static List<String> parts(String stroke) {
		return List.of(stroke.split("(?<=.)\\+")); //$NON-NLS-1$
	}

	private static boolean begins(String text, String word) {
		return text.startsWith(word) || text.contains(" " + word) || text.contains("(" + word); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static String plain(String text) {
		return text.toLowerCase(Locale.ROOT);
	}
}
