package org.frisket.typography.internal.sfnt;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Glyph names that fonts give by a number only: the Macintosh order used by table {@code post}, and the standard
 * strings of CFF (Adobe Technical Note 5176, appendix A).
 */
final class StandardNames {

	/** Numbers from here on are a CFF font's own strings. */
	static final int CFF_COUNT = 391;

	private static final List<String> MACINTOSH = read("macintosh.names");
	private static final List<String> CFF = read("cff.names");

	private StandardNames() {
	}

	/** @param number from 0 to 257 */
	static String macintosh(int number) {
		return MACINTOSH.get(number);
	}

	/** @param number from 0 to 390 */
	static String cff(int number) {
		return CFF.get(number);
	}

	private static List<String> read(String resource) {
		try (InputStream in = StandardNames.class.getResourceAsStream(resource)) {
			return List.of(new String(in.readAllBytes(), StandardCharsets.US_ASCII).strip().split("\\s+"));
		} catch (IOException broken) {
			throw new UncheckedIOException(broken);
		}
	}
}
