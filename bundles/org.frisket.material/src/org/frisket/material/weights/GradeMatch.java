package org.frisket.material.weights;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which grade a sheet of a measured grammage may be. Several can fit: 65 lb cover and 80 lb bristol weigh the same to the
 * eye and to the scale.
 *
 * @param deviation by which the sheet weighs more (above 0) or less than this weight says, as a part of it
 * @param share     how much speaks for it among all that were asked about, 0 to 1
 */
public record GradeMatch(BasisWeight weight, double deviation, double share, Sureness sureness) {

	/** How far a match is to be trusted. */
	public enum Sureness {
		/** It fits, and no other does. */
		SURE,
		/** It fits best by far. */
		LIKELY,
		/** Others fit nearly as well. */
		UNSURE,
		/** It is too far off. */
		NO
	}

	/** How far a make strays from what it says, one standard deviation: common practice, no source. */
	private static final double STRAY = 0.02;
	/** Beyond so many deviations it is something else. */
	private static final double FAR = 3;
	private static final double SURE_SHARE = 0.95;
	private static final double LIKELY_SHARE = 0.6;

	/**
	 * The grades in which a sheet could be meant when its pack says so many pounds, the best first.
	 *
	 * @param grammage    measured, in g/m²
	 * @param uncertainty of the measuring, as a part of it
	 */
	public static List<GradeMatch> ofLabel(BigDecimal pounds, BigDecimal grammage, double uncertainty) {
		return among(Arrays.stream(Grade.values()).flatMap(grade -> weight(pounds, grade).stream()), grammage, uncertainty);
	}

	/** The weights the trade usually has that come near, the nearest first. */
	public static List<GradeMatch> ofUsual(BigDecimal grammage, double uncertainty) {
		return among(Arrays.stream(Grade.values()).flatMap(grade -> grade.usual().stream()
				.map(pounds -> new BasisWeight(pounds, grade))), grammage, uncertainty);
	}

	/** Pounds of a label may be more than any sheet of a grade can weigh. */
	private static Optional<BasisWeight> weight(BigDecimal pounds, Grade grade) {
		return grade.grammage(pounds).compareTo(Measures.HEAVIEST) <= 0 ? Optional.of(new BasisWeight(pounds, grade))
				: Optional.empty();
	}

	private static List<GradeMatch> among(Stream<BasisWeight> weights, BigDecimal grammage, double uncertainty) {
		double spread = Math.hypot(STRAY, uncertainty);
		List<BasisWeight> all = weights.toList();
		// Grades of the same basic size are one paper under two names, not two that could be mixed up.
		double sum = all.stream().map(BasisWeight::grammage).distinct()
				.mapToDouble(nominal -> likelihood(deviation(nominal, grammage) / spread)).sum();
		return all.stream().map(weight -> {
			double deviation = deviation(weight.grammage(), grammage);
			double share = sum == 0 ? 0 : likelihood(deviation / spread) / sum;
			return new GradeMatch(weight, deviation, share, sureness(Math.abs(deviation) / spread, share));
		}).sorted(Comparator.comparingDouble(match -> Math.abs(match.deviation()))).toList();
	}

	private static double deviation(BigDecimal nominal, BigDecimal grammage) {
		return grammage.doubleValue() / nominal.doubleValue() - 1;
	}

	private static double likelihood(double off) {
		return Math.exp(-off * off / 2);
	}

	private static Sureness sureness(double off, double share) {
		if (off > FAR) {
			return Sureness.NO;
		}
		if (share >= SURE_SHARE) {
			return Sureness.SURE;
		}
		return share >= LIKELY_SHARE ? Sureness.LIKELY : Sureness.UNSURE;
	}
}
