package org.frisket.material.calibration;

import java.util.List;

import org.eclipse.osgi.util.NLS;

/**
 * Finds a blade's offset from how corners of a right angle came out that were made for several offsets.
 *
 * <p>A corner made for less than the blade's offset is passed by the whole difference. One made for k more than that is
 * overrun: to first order the tip moves on the involute of a circle, k (cos a + a sin a) after a turn of a, which comes to
 * k π/2 at a right angle; the term of second order, -(π/2 - 1) k²/o for a cell made for o, was fitted to numeric
 * integration and is right to a fiftieth up to k = 0.6 o. Readings are brought back to k with that, a straight line of
 * least squares is laid through k over the offset, and where it is zero the corner closes. Derived here, and checked by a
 * simulation that drags a tip and knows none of it.
 */
public final class OffsetCalibration {

	/** The overrun of a right angle for each mm of too much offset, to first order. */
	private static final double OVERRUN = Math.PI / 2;

	/** Fewer tell no error. */
	public static final int FEWEST = 3;

	private OffsetCalibration() {
	}

	/**
	 * The offset at which corners close, between the cells.
	 *
	 * @throws IllegalArgumentException if there are fewer than three different offsets, or the readings do not pass through
	 *                                  zero within them
	 */
	public static Estimate of(List<OffsetReading> readings) {
		if (readings.stream().mapToDouble(OffsetReading::offset).distinct().count() < FEWEST) {
			throw new IllegalArgumentException(NLS.bind(Messages.OffsetCalibration_few, FEWEST));
		}
		double[] offsets = readings.stream().mapToDouble(OffsetReading::offset).toArray();
		double[] excess = readings.stream().mapToDouble(OffsetCalibration::excess).toArray();
		return root(Line.through(offsets, excess), offsets);
	}

	/**
	 * The offset where nothing was measured and one cell looks best. The blade's own is anywhere within half a step of it,
	 * as likely here as there: the standard error is the step over the root of twelve (a rectangular distribution, JCGM 100
	 * 4.3.7; from memory).
	 *
	 * @param cell that looks best, from 0
	 */
	public static Estimate best(OffsetSheet sheet, int cell) {
		List<Double> offsets = sheet.offsets();
		double step = offsets.size() < 2 ? Double.NaN
				: (offsets.get(offsets.size() - 1) - offsets.get(0)) / (offsets.size() - 1);
		return new Estimate(offsets.get(cell), step / Math.sqrt(12));
	}

	/**
	 * The same from gaps that are only known in size, as when cells are ranked by how well they close: which cells are
	 * below and which above the offset is chosen so that the line fits best.
	 *
	 * @param readings with sizes that are not below zero
	 * @throws IllegalArgumentException as {@link #of}
	 */
	public static Estimate ofSizes(List<OffsetReading> readings) {
		List<OffsetReading> sorted = readings.stream()
				.sorted((a, b) -> Double.compare(a.offset(), b.offset())).toList();
		double least = Double.POSITIVE_INFINITY;
		Estimate best = null;
		IllegalArgumentException refused = null;
		for (int above = 1; above < sorted.size(); above++) {
			int from = above;
			List<OffsetReading> signed = java.util.stream.IntStream.range(0, sorted.size())
					.mapToObj(i -> new OffsetReading(sorted.get(i).offset(),
							(i < from ? -1 : 1) * Math.abs(sorted.get(i).miss())))
					.toList();
			try {
				Estimate estimate = of(signed);
				double[] offsets = signed.stream().mapToDouble(OffsetReading::offset).toArray();
				double[] excess = signed.stream().mapToDouble(OffsetCalibration::excess).toArray();
				double squares = Line.through(offsets, excess).squares();
				if (squares < least) {
					least = squares;
					best = estimate;
				}
			} catch (IllegalArgumentException e) {
				refused = e;
			}
		}
		if (best == null) {
			throw refused != null ? refused
					: new IllegalArgumentException(NLS.bind(Messages.OffsetCalibration_few, FEWEST));
		}
		return best;
	}

	/** By how much the cell was made for too much offset. */
	private static double excess(OffsetReading reading) {
		double miss = reading.miss();
		double second = (OVERRUN - 1) / reading.offset();
		double root = OVERRUN * OVERRUN - 4 * second * miss;
		if (miss <= 0 || reading.offset() == 0 || root < 0) {
			return miss <= 0 ? miss : miss / OVERRUN;
		}
		return (OVERRUN - Math.sqrt(root)) / (2 * second);
	}

	private static Estimate root(Line line, double[] offsets) {
		double root = line.root();
		double least = java.util.Arrays.stream(offsets).min().orElseThrow();
		double most = java.util.Arrays.stream(offsets).max().orElseThrow();
		if (!(line.slope() > 0) || root < least || root > most) {
			throw new IllegalArgumentException(Messages.OffsetCalibration_noZero);
		}
		return new Estimate(root, line.rootError());
	}
}
