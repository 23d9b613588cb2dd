package org.frisket.export.preset;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

import org.eclipse.osgi.util.NLS;

/**
 * A preset as text:
 *
 * <pre>
 * # a remark
 * name = Gift tags to the cutter
 * format = org.frisket.export.svg.export
 * option.margin = 2mm
 * names = {job}-{sheet}
 * </pre>
 *
 * Keys that are not known are passed over: a newer Frisket may have more. In values {@code \n} ends a line, {@code \s} is a
 * space at an end and {@code \\} a backslash.
 */
final class PresetText {

	private static final String NAME = "name";
	private static final String FORMAT = "format";
	private static final String MACHINE = "machine";
	private static final String NAMES = "names";
	private static final String FOLDER = "folder";
	private static final String OPTION = "option.";
	private static final String RUN = "run.";

	private PresetText() {
	}

	static String of(Preset preset) {
		Map<String, String> lines = new LinkedHashMap<>();
		lines.put(NAME, preset.name());
		lines.put(FORMAT, preset.format());
		preset.options().forEach((option, value) -> lines.put(OPTION + option, value));
		preset.run().forEach((option, value) -> lines.put(RUN + option, value));
		putUnlessEmpty(lines, MACHINE, preset.machine());
		putUnlessEmpty(lines, NAMES, preset.names());
		putUnlessEmpty(lines, FOLDER, preset.folder());
		StringBuilder text = new StringBuilder();
		lines.forEach((key, value) -> text.append(key).append(" = ").append(escaped(value)).append('\n'));
		return text.toString();
	}

	private static void putUnlessEmpty(Map<String, String> lines, String key, String value) {
		if (!value.isEmpty()) {
			lines.put(key, value);
		}
	}

	/** @throws IllegalArgumentException if it is none; the message names the line and the reason */
	static Preset read(String text) {
		Map<String, String> values = new LinkedHashMap<>();
		String[] lines = text.replaceFirst("^\uFEFF", "").split("\\R", -1);
		for (int i = 0; i < lines.length; i++) {
			String line = lines[i].strip();
			if (!line.isEmpty() && !line.startsWith("#")) {
				try {
					take(line, values);
				} catch (IllegalArgumentException bad) {
					throw new IllegalArgumentException(NLS.bind(Messages.PresetText_line, i + 1, bad.getMessage()), bad);
				}
			}
		}
		return new Preset(values.getOrDefault(NAME, ""), values.getOrDefault(FORMAT, ""), under(OPTION, values),
				under(RUN, values), values.getOrDefault(MACHINE, ""), values.getOrDefault(NAMES, ""),
				values.getOrDefault(FOLDER, ""));
	}

	private static void take(String line, Map<String, String> values) {
		int equals = line.indexOf('=');
		if (equals <= 0) {
			throw new IllegalArgumentException(Messages.PresetText_form);
		}
		String key = line.substring(0, equals).strip();
		if (values.put(key, plain(line.substring(equals + 1).strip())) != null) {
			throw new IllegalArgumentException(NLS.bind(Messages.PresetText_twice, key));
		}
	}

	private static Map<String, String> under(String prefix, Map<String, String> values) {
		Map<String, String> found = new TreeMap<>();
		values.forEach((key, value) -> {
			if (key.startsWith(prefix)) {
				found.put(key.substring(prefix.length()), value);
			}
		});
		return found;
	}

	private static String escaped(String value) {
		String text = value.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r");
		StringBuilder escaped = new StringBuilder();
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			boolean end = i == 0 || i == text.length() - 1;
			// another kind of space, or another end of line, would be lost in reading
			if (c == ' ' && end) {
				escaped.append("\\s");
			} else if (c != ' ' && (Character.isWhitespace(c) || c == '\u0085' || c == '\u2028' || c == '\u2029')) {
				escaped.append("\\u").append("%04x".formatted((int) c));
			} else {
				escaped.append(c);
			}
		}
		return escaped.toString();
	}

	private static String plain(String value) {
		StringBuilder plain = new StringBuilder();
		for (int i = 0; i < value.length(); i++) {
			char c = value.charAt(i);
			if (c != '\\') {
				plain.append(c);
				continue;
			}
			char next = ++i < value.length() ? value.charAt(i) : 0;
			switch (next) {
			case 'n' -> plain.append('\n');
			case 'r' -> plain.append('\r');
			case 's' -> plain.append(' ');
			case '\\' -> plain.append('\\');
			case 'u' -> {
				String digits = value.substring(i + 1, Math.min(i + 5, value.length()));
				if (!digits.matches("[0-9a-fA-F]{4}")) {
					throw new IllegalArgumentException(NLS.bind(Messages.PresetText_escape, "\\u" + digits));
				}
				plain.append((char) Integer.parseInt(digits, 16));
				i += 4;
			}
			default -> throw new IllegalArgumentException(
					NLS.bind(Messages.PresetText_escape, next == 0 ? "\\" : "\\" + next));
			}
		}
		return plain.toString();
	}
}
