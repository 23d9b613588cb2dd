package org.frisket.material.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

class DepthFitTest {

	private record Try(double measure, double pressure, boolean hit) {
	}

	private static DepthFit fit(List<Try> tries, DepthFit.Ends ends) {
		double[] measures = tries.stream().mapToDouble(Try::measure).toArray();
		double[] pressures = tries.stream().mapToDouble(Try::pressure).toArray();
		boolean[] hits = new boolean[tries.size()];
		for (int i = 0; i < hits.length; i++) {
			hits[i] = tries.get(i).hit();
		}
		return new DepthFit(new Depths(measures, pressures, hits), ends, 1);
	}

	/** Sweeps from 10 to 30 in steps of 5, at each weight through from a known pressure on. */
	private static List<Try> clean(double[] weights, double[] from) {
		List<Try> tries = new ArrayList<>();
		for (int i = 0; i < weights.length; i++) {
			for (double pressure = 10; pressure <= 30; pressure += 5) {
				for (int repeat = 0; repeat < 5; repeat++) {
					tries.add(new Try(weights[i], pressure, pressure >= from[i]));
				}
			}
		}
		return tries;
	}

	@Test
	void withoutContradictionItSaysWhatWasTried() {
		DepthFit fit = fit(clean(new double[] { 120, 216, 300 }, new double[] { 10, 15, 25 }),
				DepthFit.Ends.LEAST_REACHING);
		assertEquals(10, fit.at(120).pressure());
		assertEquals(15, fit.at(216).pressure());
		assertEquals(25, fit.at(300).pressure());
		assertEquals(20, fit.at(258).pressure(), 1e-9);
		assertEquals(10, fit.at(216).least(), "five failures at 10, none above");
		assertEquals(15, fit.at(216).most(), "five successes at 15");
		assertTrue(fit.covers(216) && !fit.covers(119) && !fit.covers(301));
		assertEquals(25, fit.at(400).pressure());
		assertEquals(Double.POSITIVE_INFINITY, fit.at(400).most());
		assertEquals(Double.NEGATIVE_INFINITY, fit.at(80).least());
	}

	@Test
	void whatWasNeverReachedIsOneStepBeyondAndWhatAlwaysWasIsTheLeastTried() {
		DepthFit through = fit(clean(new double[] { 120, 300 }, new double[] { 0, 99 }), DepthFit.Ends.LEAST_REACHING);
		assertEquals(10, through.at(120).pressure());
		assertEquals(31, through.at(300).pressure());
		DepthFit carrier = fit(clean(new double[] { 120, 300 }, new double[] { 0, 99 }), DepthFit.Ends.GREATEST_SPARING);
		assertEquals(9, carrier.at(120).pressure());
		assertEquals(30, carrier.at(300).pressure());
	}

	@Test
	void aWeightThatContradictsItsNeighbourIsPooledWithIt() {
		DepthFit fit = fit(clean(new double[] { 120, 216 }, new double[] { 20, 10 }), DepthFit.Ends.LEAST_REACHING);
		assertEquals(15, fit.at(120).pressure());
		assertEquals(15, fit.at(216).pressure());
	}

	@Test
	void fourThatAgreeBoundNothingAndFiveDo() {
		List<Try> tries = new ArrayList<>(Collections.nCopies(4, new Try(200, 20, true)));
		assertEquals(Double.POSITIVE_INFINITY, fit(tries, DepthFit.Ends.LEAST_REACHING).at(200).most());
		tries.add(new Try(200, 20, true));
		assertEquals(20, fit(tries, DepthFit.Ends.LEAST_REACHING).at(200).most());
	}

	@Test
	void lighterStockThatResistsAndHeavierThatYieldsBoundToo() {
		List<Try> tries = new ArrayList<>(Collections.nCopies(5, new Try(100, 10, false)));
		tries.addAll(Collections.nCopies(5, new Try(300, 20, true)));
		DepthFit.Band band = fit(tries, DepthFit.Ends.LEAST_REACHING).at(200);
		assertEquals(20, band.most());
		assertEquals(10, band.least());
		assertEquals(Double.POSITIVE_INFINITY,
				fit(tries.subList(0, 5), DepthFit.Ends.LEAST_REACHING).at(100).most());
		tries.set(0, new Try(100, 10, true));
		assertEquals(Double.NEGATIVE_INFINITY, fit(tries, DepthFit.Ends.LEAST_REACHING).at(200).least(),
				"four of five are too few");
	}

	private static List<Try> random(Random random, int weights, int tries) {
		List<Try> all = new ArrayList<>();
		for (int i = 0; i < tries; i++) {
			double weight = 80 + 20 * random.nextInt(weights);
			double pressure = 1 + random.nextInt(33);
			all.add(new Try(weight, pressure, random.nextDouble() < chance(weight, pressure)));
		}
		return all;
	}

	/** Half at a pressure that grows with the weight; the truth of the simulation. */
	private static double threshold(double weight) {
		return 4.3 + weight / 16;
	}

	private static double chance(double weight, double pressure) {
		return 1 / (1 + Math.exp(-(pressure - threshold(weight)) / 1.5));
	}

	@Test
	void itNeverFallsAsStockGetsHeavierAndTheOrderOfTrialsDoesNotMatter() {
		Random random = new Random(4);
		for (int round = 0; round < 300; round++) {
			List<Try> tries = random(random, 1 + random.nextInt(12), 1 + random.nextInt(120));
			for (DepthFit.Ends ends : DepthFit.Ends.values()) {
				DepthFit fit = fit(tries, ends);
				List<Try> shuffled = new ArrayList<>(tries);
				Collections.shuffle(shuffled, random);
				DepthFit other = fit(shuffled, ends);
				double last = Double.NEGATIVE_INFINITY;
				for (double weight = 60; weight <= 340; weight += 3) {
					assertEquals(fit.at(weight), other.at(weight));
					assertTrue(fit.at(weight).pressure() >= last);
					last = fit.at(weight).pressure();
				}
			}
		}
	}

	/** The interval promises nine times in ten, whatever the shape of the chances; a simulation that knows the truth. */
	@Test
	void theIntervalHoldsTheTruthAtLeastNineTimesInTen() {
		Random random = new Random(9);
		int held = 0;
		int bounded = 0;
		int all = 3000;
		for (int round = 0; round < all; round++) {
			DepthFit fit = fit(random(random, 10, 250), DepthFit.Ends.LEAST_REACHING);
			double weight = 80 + 20 * random.nextInt(10);
			DepthFit.Band band = fit.at(weight);
			double truth = threshold(weight);
			held += band.least() <= truth && truth <= band.most() ? 1 : 0;
			bounded += Double.isFinite(band.least()) && Double.isFinite(band.most()) ? 1 : 0;
		}
		assertTrue(held >= all * 0.9, held + " of " + all);
		assertTrue(bounded > all / 2, "an interval without ends would be no help: " + bounded);
	}

	/** The least-squares fit of thresholds must find a known straight line again, within what a step allows. */
	@Test
	void itFindsAKnownThresholdAgain() {
		DepthFit fit = fit(random(new Random(31), 10, 20_000), DepthFit.Ends.LEAST_REACHING);
		for (double weight = 100; weight <= 240; weight += 20) {
			assertEquals(threshold(weight) + 0.5, fit.at(weight).pressure(), 1);
			assertFalse(fit.at(weight).most() - fit.at(weight).least() > 6);
		}
	}
}
