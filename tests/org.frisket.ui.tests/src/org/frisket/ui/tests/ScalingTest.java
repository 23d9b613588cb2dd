package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.ui.bench.internal.grips.Grip;
import org.frisket.ui.bench.internal.grips.Scaling;
import org.junit.jupiter.api.Test;

class ScalingTest {

	private static final Bounds BOX = new Bounds(10, 20, 50, 40);

	@Test
	void whatIsFixedStaysAndRatiosAreKeptAsAsked() {
		Random random = new Random(1846);
		for (int i = 0; i < 2000; i++) {
			Grip grip = Grip.values()[random.nextInt(8)];
			boolean turned = random.nextBoolean();
			boolean centred = random.nextBoolean();
			Scaling scaling = Scaling.of(BOX, grip, random.nextGaussian() * 30, random.nextGaussian() * 30, turned,
					centred, 0.1);
			Point fixed = centred ? BOX.centre()
					: new Point(30 - grip.across() * 20, 30 - grip.down() * 10);
			Point image = scaling.transform().apply(fixed);
			assertEquals(fixed.x(), image.x(), 1e-9);
			assertEquals(fixed.y(), image.y(), 1e-9);
			assertTrue(scaling.sx() > 0 && scaling.sy() > 0, scaling.toString());
			if (grip.isCorner() != turned) {
				assertEquals(scaling.sx(), scaling.sy());
			}
			if (grip.isSide() && !turned) {
				assertEquals(1, grip.across() == 0 ? scaling.sx() : scaling.sy(), 1e-12);
			}
		}
	}

	@Test
	void sizesComeOutRound() {
		Scaling scaling = Scaling.of(BOX, Grip.RIGHT, 3.456, 9, false, false, 0.1);
		assertEquals(43.5, 40 * scaling.sx(), 1e-9);
		Scaling corner = Scaling.of(BOX, Grip.BOTTOM_RIGHT, 20, 10, false, false, 0.1);
		assertEquals(1.5, corner.sx(), 1e-12);
	}

	@Test
	void boxNeverVanishesOrTurnsOver() {
		Scaling scaling = Scaling.of(BOX, Grip.LEFT, 400, 0, false, false, 0.1);
		assertEquals(0.1, 40 * scaling.sx(), 1e-12);
	}

	@Test
	void lineHasOneSizeOnly() {
		Scaling scaling = Scaling.of(new Bounds(0, 0, 0, 10), Grip.BOTTOM_RIGHT, 5, 5, true, false, 0.1);
		assertEquals(1, scaling.sx());
		assertEquals(1.5, scaling.sy(), 1e-12);
	}
}
