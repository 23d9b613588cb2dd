package org.frisket.imports.dxf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;
import org.frisket.imports.UnreadableArtException;

/** Reads a file as pairs of lines: a group code and its value. */
final class GroupReader {

	/** Files before release 2007 are commonly in it; newer ones in UTF-8. */
	private static final Charset OLD = Charset.forName("windows-1252");
	private static final Pattern ESCAPE = Pattern.compile("\\\\U\\+([0-9A-Fa-f]{4})");
	private static final int LONGEST_LINE = 100_000;
	private static final int FIRST_BEYOND_ASCII = 128;
	/** Binary files have a zero among their first bytes. */
	private static final int FIRST_BYTES = 64;

	private final String file;
	private final InputStream in;
	/** Of the line. */
	private byte[] bytes = new byte[64];
	private int line;
	private boolean ended;

	/** @param in buffered, so that it can be marked */
	GroupReader(String file, InputStream in) {
		this.file = file;
		this.in = in;
	}

	/** The next one, or null after {@code EOF}; what follows that is not read. */
	Group next() throws IOException, UnreadableArtException {
		if (ended) {
			return null;
		}
		if (line == 0) {
			refuseBinary();
		}
		String code = readLine();
		while (code != null && line == 1 && code.isBlank()) {
			code = readLine();
		}
		if (code == null) {
			throw line == 0 ? new UnreadableArtException(file, "", Messages.GroupReader_empty)
					: failure(Messages.GroupReader_brokenOff);
		}
		int number = number(code);
		String value = readLine();
		if (value == null) {
			throw failure(Messages.GroupReader_brokenOff);
		}
		Group group = new Group(number, unescaped(value), line);
		ended = group.is(0, "EOF");
		return ended ? null : group;
	}

	private void refuseBinary() throws IOException, UnreadableArtException {
		in.mark(FIRST_BYTES);
		for (byte b : in.readNBytes(FIRST_BYTES)) {
			if (b == 0) {
				throw new UnreadableArtException(file, "", Messages.GroupReader_binary);
			}
		}
		in.reset();
	}

	private int number(String code) throws UnreadableArtException {
		try {
			return Integer.parseInt(code.strip());
		} catch (NumberFormatException e) {
			throw failure(NLS.bind(Messages.GroupReader_code, code.length() > 20 ? code.substring(0, 20) : code));
		}
	}

	/** Without its end, which is LF or CR LF; null at the end of the file. */
	private String readLine() throws IOException, UnreadableArtException {
		int read = in.read();
		if (read < 0) {
			return null;
		}
		line++;
		int length = 0;
		int all = 0;
		for (; read >= 0 && read != '\n'; read = in.read()) {
			if (length == LONGEST_LINE) {
				throw failure(NLS.bind(Messages.GroupReader_code, "…"));
			}
			if (length == bytes.length) {
				bytes = Arrays.copyOf(bytes, 2 * length);
			}
			bytes[length++] = (byte) read;
			all |= read;
		}
		if (length > 0 && bytes[length - 1] == '\r') {
			length--;
		}
		return all < FIRST_BEYOND_ASCII ? new String(bytes, 0, length, StandardCharsets.ISO_8859_1) : decoded(length);
	}

	private String decoded(int length) {
		try {
			return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, 0, length)).toString();
		} catch (CharacterCodingException e) {
			return new String(bytes, 0, length, OLD);
		}
	}

	/** Characters that the old code pages lack are written as {@code \U+00E4}. */
	private static String unescaped(String value) {
		String stripped = value.strip();
		return stripped.indexOf('\\') < 0 ? stripped
				: ESCAPE.matcher(stripped).replaceAll(m -> Matcher
						.quoteReplacement(String.valueOf((char) Integer.parseInt(m.group(1), 16))));
	}

	UnreadableArtException failure(String reason) {
		return new UnreadableArtException(file, place(line), reason);
	}

	UnreadableArtException failure(Group group, String reason) {
		return new UnreadableArtException(file, place(group.line()), reason);
	}

	static String place(int line) {
		return NLS.bind(Messages.place_line, line);
	}
}
