package org.frisket.orders.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;

/** How files of jobs are packed. */
class DocumentsTest {

	private static final int LARGE = 300_000;

	private static byte[] picture() {
		byte[] bytes = new byte[LARGE];
		new Random(5).nextBytes(bytes);
		return Base64.getEncoder().encode(bytes);
	}

	private static byte[] corners() {
		Random random = new Random(5);
		StringBuilder path = new StringBuilder();
		while (path.length() < LARGE) {
			path.append(String.format(Locale.ROOT, "L%.3f %.3f", random.nextDouble() * 300, random.nextDouble() * 200));
		}
		return path.toString().getBytes(StandardCharsets.US_ASCII);
	}

	private static byte[] tags() {
		return "<elements name=\"Tag\"><operations kind=\"cut\"/></elements>\n".repeat(LARGE / 50).getBytes(StandardCharsets.US_ASCII);
	}

	/** @param times as small as it was at least */
	private static void assertPacked(byte[] file, double times) throws Exception {
		byte[] packed = Documents.packed(file);
		assertTrue(packed.length * times <= file.length, packed.length + " of " + file.length);
		assertArrayEquals(file, Documents.unpacked(packed));
	}

	@Test
	void whateverAJobIsMostlyMadeOfIsPackedWell() throws Exception {
		// six bits of eight are told
		assertPacked(picture(), 1.32);
		assertPacked(corners(), 2.1);
		assertPacked(tags(), 50);
		assertPacked(new byte[0], 0);
		assertPacked("<job/>".getBytes(StandardCharsets.US_ASCII), 0.3);
	}

	@Test
	void sameFileGivesTheSameBytes() {
		assertEquals(Base64.getEncoder().encodeToString(Documents.packed(corners())),
				Base64.getEncoder().encodeToString(Documents.packed(corners())));
	}
}
