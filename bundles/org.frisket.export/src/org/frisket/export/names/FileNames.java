package org.frisket.export.names;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.regex.Pattern;

/** Text as names of files that every file system takes, that of a camera card and of Windows too. */
final class FileNames {

	/** What Windows takes for devices, with any ending: Naming Files, Paths, and Namespaces, learn.microsoft.com. */
	private static final Pattern DEVICE = Pattern.compile("(?i)(con|prn|aux|nul|(com|lpt)[0-9¹²³])(\\..*)?");
	/** The same source. */
	private static final String FORBIDDEN = "<>:\"/\\|?*";
	/** Most file systems take 255 bytes; the rest is for what is put before and after it while the file is written. */
	static final int LONGEST = 220;
	private static final int LONGEST_VALUE = 80;

	private FileNames() {
	}

	/** A value of a field: forbidden characters become hyphens, what cannot be seen goes, and a long one is cut. */
	static String value(String text) {
		StringBuilder fit = new StringBuilder();
		Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(c -> {
			if (FORBIDDEN.indexOf(c) >= 0) {
				fit.append('-');
			} else if (isSpace(c)) {
				fit.append(' ');
			} else if (isShown(c)) {
				fit.appendCodePoint(c);
			}
		});
		return cut(fit.toString().replaceAll(" {2,}", " ").strip(), LONGEST_VALUE);
	}

	private static boolean isSpace(int c) {
		return Character.isSpaceChar(c) || Character.isWhitespace(c);
	}

	private static boolean isShown(int c) {
		return switch (Character.getType(c)) {
		case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED -> false;
		default -> true;
		};
	}

	private static String cut(String text, int bytes) {
		int[] points = text.codePoints().toArray();
		StringBuilder kept = new StringBuilder();
		int size = 0;
		for (int point : points) {
			size += bytes(Character.toString(point));
			if (size > bytes) {
				break;
			}
			kept.appendCodePoint(point);
		}
		return kept.toString().strip();
	}

	static int bytes(String text) {
		return text.getBytes(StandardCharsets.UTF_8).length;
	}

	/** Whether a character may stand in a pattern itself. */
	static boolean isForbidden(char c) {
		return FORBIDDEN.indexOf(c) >= 0 || Character.isISOControl(c);
	}

	/** A whole name without its ending: no dot or space at its ends, and no name of a device; empty if nothing is left. */
	static String whole(String name) {
		String bare = name.replaceAll("^[ .]+|[ .]+$", "");
		return DEVICE.matcher(bare).matches() ? "_" + bare : bare;
	}
}
