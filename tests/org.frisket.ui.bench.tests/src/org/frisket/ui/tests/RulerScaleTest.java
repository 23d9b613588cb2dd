package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

import org.frisket.ui.LengthUnit;
import org.frisket.ui.bench.internal.rulers.RulerScale;
import org.junit.jupiter.api.Test;

/** How rulers are divided. */
class RulerScaleTest {

	private static List<String> numbers(RulerScale scale, double fromMm, double toMm) {
		List<String> numbers = new ArrayList<>();
		for (long i = scale.before(fromMm); scale.millimetres(i) <= toMm; i++) {
			if (scale.level(i) == 0) {
				numbers.add(scale.text(i));
			}
		}
		return numbers;
	}

	@Test
	void millimetresAreCountedByTensAndDividedByOnes() {
		RulerScale scale = RulerScale.of(LengthUnit.MILLIMETRE, 6);
		assertEquals(1, scale.tick(), 1e-12);
		assertEquals(List.of("-10", "0", "10", "20"), numbers(scale, -10, 25));
		assertEquals(0, scale.level(20));
		assertEquals(1, scale.level(15));
		assertEquals(2, scale.level(13));
	}

	@Test
	void inchesAreDividedByHalvesAsRoomAllows() {
		RulerScale near = RulerScale.of(LengthUnit.INCH, 100 / 25.4);
		assertEquals(1 / 16.0, near.tick());
		assertEquals(List.of("0", "1", "2"), numbers(near, 0, 51));
		assertEquals(List.of(0, 4, 3, 4, 2, 4, 3, 4, 1),
				LongStream.rangeClosed(0, 8).mapToObj(near::level).toList());
		assertEquals(1 / 8.0, RulerScale.of(LengthUnit.INCH, 60 / 25.4).tick());
		assertEquals(1, RulerScale.of(LengthUnit.INCH, 8 / 25.4).tick());
	}

	@Test
	void magnifiedInchesAreNumberedByFractions() {
		RulerScale scale = RulerScale.of(LengthUnit.INCH, 240 / 25.4);
		assertEquals(List.of("-1/4", "0", "1/4", "1/2", "3/4", "1", "1 1/4"), numbers(scale, -25.4 / 4, 1.26 * 25.4));
	}

	@Test
	void ticksNeverCrowdAndNumbersAlwaysFit() {
		for (LengthUnit unit : LengthUnit.values()) {
			for (double px = 0.02; px < 400; px *= 1.07) {
				RulerScale scale = RulerScale.of(unit, px);
				double tick = unit.toMillimetres(scale.tick()) * px;
				double number = tick * scale.every()[0];
				assertTrue(tick >= 4.4, unit + " at " + px + ": a tick each " + tick);
				assertTrue(number >= 53, unit + " at " + px + ": a number each " + number);
				assertTrue(number < 300, unit + " at " + px + ": a number each " + number);
				assertEquals(1, scale.every()[scale.every().length - 1]);
			}
		}
	}

	@Test
	void ticksLieWhereTheyAreCounted() {
		for (LengthUnit unit : LengthUnit.values()) {
			for (double px = 0.05; px < 300; px *= 1.3) {
				RulerScale scale = RulerScale.of(unit, px);
				for (double mm = -500; mm < 500; mm += 17.3) {
					long before = scale.before(mm);
					assertTrue(scale.millimetres(before) <= mm + 1e-9 && scale.millimetres(before + 1) >= mm - 1e-9);
				}
				assertEquals("0", scale.text(0));
				assertEquals(0, scale.level(0));
			}
		}
	}
}
