package org.frisket.studio.csv;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The text of a file, whatever it is encoded in: what its byte order mark says, else UTF-8, else Latin-1.
 *
 * @param remark if the encoding was a guess
 */
public record CsvText(String text, Optional<String> remark) {

	private static final char BYTE_ORDER_MARK = '\uFEFF';

	/** @throws CharacterCodingException if a file with a byte order mark is not what that says */
	public static CsvText of(byte[] file) throws CharacterCodingException {
		if (startsWith(file, 0xFF, 0xFE)) {
			return new CsvText(decoded(file, StandardCharsets.UTF_16LE), Optional.empty());
		}
		if (startsWith(file, 0xFE, 0xFF)) {
			return new CsvText(decoded(file, StandardCharsets.UTF_16BE), Optional.empty());
		}
		if (startsWith(file, 0xEF, 0xBB, 0xBF)) {
			return new CsvText(decoded(file, StandardCharsets.UTF_8), Optional.empty());
		}
		try {
			return new CsvText(decoded(file, StandardCharsets.UTF_8), Optional.empty());
		} catch (CharacterCodingException otherwise) {
			return new CsvText(decoded(file, StandardCharsets.ISO_8859_1), Optional.of(Messages.CsvText_latin1));
		}
	}

	private static boolean startsWith(byte[] file, int... mark) {
		for (int i = 0; i < mark.length; i++) {
			if (i >= file.length || (file[i] & 0xFF) != mark[i]) {
				return false;
			}
		}
		return true;
	}

	private static String decoded(byte[] file, Charset charset) throws CharacterCodingException {
		String text = charset.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
				.onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(file)).toString();
		return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
	}
}
