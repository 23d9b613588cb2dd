package org.frisket.print.contour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Colours and their differences. */
class LabTest {

	@Test
	void differencesAreThoseOfTheStandard() {
		// from memory, of common tables for D65: red, green, blue and a grey of sRGB
		assertLab(53.24, 80.09, 67.20, 0xff0000);
		assertLab(87.73, -86.18, 83.18, 0x00ff00);
		assertLab(32.30, 79.19, -107.86, 0x0000ff);
		assertLab(53.59, 0, 0, 0x808080);
		Lab cream = Lab.of(0xf0e4c8);
		assertEquals(0, Lab.of(0x000000).distance(new Lab(0, 0, 0)), 1e-9);
		assertTrue(Lab.of(0xccc2aa).distanceInShadow(cream, 20) < 1.5);
		assertTrue(Lab.of(0xccc2aa).distance(cream) > 10);
		assertTrue(Lab.of(0x446688).distanceInShadow(cream, 20) > 30);
	}

	private static void assertLab(double l, double a, double b, int rgb) {
		Lab lab = Lab.of(rgb);
		assertTrue(lab.distance(new Lab(l, a, b)) < 0.1, lab.toString());
	}
}
