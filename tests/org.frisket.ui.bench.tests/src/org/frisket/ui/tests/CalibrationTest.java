package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.frisket.ui.bench.internal.screen.Calibration;
import org.junit.jupiter.api.Test;

class CalibrationTest {

	@Test
	void resolutionOfTheWindowSystemIsTaken() {
		assertEquals(96 / 25.4, Calibration.ofResolution(96).pixelsPerMm(), 1e-12);
		assertEquals(96, new Calibration(96 / 25.4).dotsPerInch(), 1e-9);
	}

	@Test
	void nonsenseOfTheWindowSystemIsBroughtIntoRange() {
		assertTrue(Calibration.isPlausible(Calibration.ofResolution(0).pixelsPerMm()));
		assertTrue(Calibration.isPlausible(Calibration.ofResolution(1e9).pixelsPerMm()));
	}

	@Test
	void whatNoScreenIsLikeIsRefused() {
		for (double each : new double[] { 0, -1, 0.3, 81, Double.NaN, Double.POSITIVE_INFINITY }) {
			assertFalse(Calibration.isPlausible(each), String.valueOf(each));
			assertThrows(IllegalArgumentException.class, () -> new Calibration(each));
		}
		assertTrue(Calibration.isPlausible(3.78));
	}

	@Test
	void cardIsAsTheStandardHasIt() {
		assertEquals(85.6, Calibration.CARD_WIDTH);
		assertEquals(53.98, Calibration.CARD_HEIGHT);
	}
}
