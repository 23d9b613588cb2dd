package org.frisket.print.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class GreyTest {

	private final Grey picture = new Grey(3, 2, new byte[] { 0, 100, (byte) 200, 40, 60, (byte) 255 });

	@Test
	void pixelsAreTheirShadesAtTheirCentres() {
		assertEquals(200, picture.at(2, 0));
		assertEquals(255, picture.at(2, 1));
		assertEquals(60, picture.sample(1.5, 1.5), 1e-12);
		assertEquals(50, picture.sample(1, 0.5), 1e-12);
		assertEquals(20, picture.sample(0.5, 1), 1e-12);
		assertEquals(50, picture.sample(1, 1), 1e-12);
	}

	@Test
	void beyondTheEdgeItGoesOn() {
		assertEquals(0, picture.sample(-4, -1), 1e-12);
		assertEquals(255, picture.sample(9, 9), 1e-12);
		assertTrue(picture.contains(0, 2));
		assertFalse(picture.contains(3.1, 1));
		assertThrows(IndexOutOfBoundsException.class, () -> picture.at(3, 0));
		assertThrows(IndexOutOfBoundsException.class, () -> picture.at(0, -1));
	}

	@Test
	void asManyBytesAsPixels() {
		assertThrows(IllegalArgumentException.class, () -> new Grey(2, 2, new byte[3]));
		assertThrows(IllegalArgumentException.class, () -> new Grey(0, 0, new byte[0]));
		assertThrows(IllegalArgumentException.class, () -> new Grey(1 << 16, 1 << 16, new byte[0]));
	}
}
