package org.frisket.ui.bench.internal.rulers;

import java.text.NumberFormat;
import java.util.stream.IntStream;

import org.frisket.ui.LengthUnit;

/**
 * How a ruler is divided: ticks at multiples of one distance, the longer ones at multiples of more, numbers at the
 * longest. Millimetres are divided by tens, inches by halves.
 *
 * @param unit  what the numbers count
 * @param tick  distance of the ticks, in the unit
 * @param every how many ticks lie between those of one length, the longest first; the last is 1
 */
public record RulerScale(LengthUnit unit, double tick, int[] every) {

	private static final double NUMBER_PX = 54;
	private static final double TICK_PX = 4.5;
	private static final int DEEPEST = -3;
	private static final int HIGHEST = 5;
	private static final int[] MILLIMETRE_STEPS = { 1, 2, 5 };
	private static final int[][] MILLIMETRE_PARTS = { { 10, 5, 1 }, { 20, 10, 2, 1 }, { 50, 10, 5, 1 } };
	private static final int FINEST_INCH_PART = 64;

	/** The division for a zoom. */
	public static RulerScale of(LengthUnit unit, double pixelsPerMm) {
		double px = unit.toMillimetres(pixelsPerMm);
		return unit == LengthUnit.INCH ? inches(px) : decimal(unit, px);
	}

	private static RulerScale decimal(LengthUnit unit, double px) {
		for (int power = DEEPEST; power <= HIGHEST; power++) {
			for (int i = 0; i < MILLIMETRE_STEPS.length; i++) {
				double ten = Math.pow(10, power);
				if (MILLIMETRE_STEPS[i] * ten * px >= NUMBER_PX) {
					return divided(unit, ten / 10, MILLIMETRE_PARTS[i], px);
				}
			}
		}
		return divided(unit, Math.pow(10, HIGHEST), new int[] { 1 }, px);
	}

	private static RulerScale inches(double px) {
		if (px < NUMBER_PX) {
			// whole inches, counted by tens when they are far too many
			RulerScale whole = decimal(LengthUnit.INCH, px);
			return whole.tick() >= 1 ? whole : new RulerScale(LengthUnit.INCH, 1, without(whole));
		}
		int parts = FINEST_INCH_PART;
		while (parts > 1 && px / parts < NUMBER_PX) {
			parts /= 2;
		}
		int finest = FINEST_INCH_PART;
		while (finest > parts && px / finest < TICK_PX) {
			finest /= 2;
		}
		int first = finest / parts;
		int levels = Integer.numberOfTrailingZeros(first) + 1;
		return new RulerScale(LengthUnit.INCH, 1.0 / finest,
				IntStream.range(0, levels).map(i -> first >> i).toArray());
	}

	/** The same numbers with nothing finer than an inch between them. */
	private static int[] without(RulerScale scale) {
		return IntStream.of(scale.every()).mapToDouble(each -> each * scale.tick()).filter(each -> each > 0.999)
				.mapToInt(each -> (int) Math.round(each)).toArray();
	}

	private static RulerScale divided(LengthUnit unit, double tick, int[] parts, double px) {
		int finest = (int) IntStream.of(parts).filter(part -> part * tick * px >= TICK_PX).count();
		int[] every = IntStream.range(0, Math.max(1, finest)).map(i -> parts[i]).toArray();
		int unitPart = every[every.length - 1];
		return new RulerScale(unit, tick * unitPart, IntStream.of(every).map(each -> each / unitPart).toArray());
	}

	/** The place of a tick in mm. */
	public double millimetres(long index) {
		return unit.toMillimetres(index * tick);
	}

	/** The last tick at or before a place in mm. */
	public long before(double mm) {
		return (long) Math.floor(unit.fromMillimetres(mm) / tick);
	}

	/** 0 for the longest ticks, which bear numbers, more for shorter ones. */
	public int level(long index) {
		int level = 0;
		while (level < every.length - 1 && index % every[level] != 0) {
			level++;
		}
		return level;
	}

	/** The number at a tick: inches as whole ones and a fraction. */
	public String text(long index) {
		if (unit == LengthUnit.INCH && tick < 1) {
			int parts = (int) Math.round(1 / tick);
			return fraction(index, parts);
		}
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setGroupingUsed(false);
		format.setMaximumFractionDigits(-DEEPEST);
		return format.format(index == 0 ? 0 : index * tick);
	}

	private static String fraction(long index, int parts) {
		long whole = Math.abs(index) / parts;
		long rest = Math.abs(index) % parts;
		String sign = index < 0 ? "-" : ""; //$NON-NLS-1$ //$NON-NLS-2$
		if (rest == 0) {
			return sign + whole;
		}
		int shared = Math.min(Long.numberOfTrailingZeros(rest), Integer.numberOfTrailingZeros(parts));
		String part = (rest >> shared) + "/" + (parts >> shared); //$NON-NLS-1$
		return sign + (whole == 0 ? part : whole + " " + part); //$NON-NLS-1$
	}
}
