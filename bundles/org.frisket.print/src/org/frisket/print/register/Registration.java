package org.frisket.print.register;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Point;

/**
 * How a sheet lies: the map from designed to measured places that fits its marks best, and how far that can be trusted. All
 * lengths are in mm; residuals are measured minus mapped places, in the measured frame.
 *
 * @param kind         what the sheet was taken to have done
 * @param map          from the design to the measured frame
 * @param designed     the marks as designed
 * @param measured     the same marks as measured, in the same order
 * @param residuals    one a mark
 * @param conditioning ratio of the singular values of the designed marks round their centroid, 0 on a line to 1
 * @param findings     what is doubtful about it, the worst first
 */
public record Registration(FitKind kind, Projection map, List<Point> designed, List<Point> measured,
		List<Point> residuals, double conditioning, List<RegisterFinding> findings) {

	/** An affine fit to marks that are less spread out is refused: a choice, that marks on a line are far below. */
	public static final double LEAST_CONDITIONING = 0.05;
	/** Nearer than this, in mm, two marks are one. */
	private static final double APART = 0.01;

	public Registration {
		designed = List.copyOf(designed);
		measured = List.copyOf(measured);
		residuals = List.copyOf(residuals);
		findings = List.copyOf(findings);
	}

	/**
	 * Fits a map to marks.
	 *
	 * @throws RegisterException if there are too few marks, or they lie so that they do not settle it
	 */
	public static Registration fit(FitKind kind, List<Point> designed, List<Point> measured) throws RegisterException {
		return fit(kind, designed, measured, IntStream.rangeClosed(1, designed.size()).boxed().toList());
	}

	/**
	 * Fits a map to some of the marks of a sheet.
	 *
	 * @param numbers what messages call them
	 * @throws RegisterException if there are too few marks, or they lie so that they do not settle it
	 */
	public static Registration fit(FitKind kind, List<Point> designed, List<Point> measured, List<Integer> numbers)
			throws RegisterException {
		check(kind, designed, measured, numbers);
		Projection map;
		try {
			map = MarkFit.of(kind, designed, measured);
		} catch (ArithmeticException open) {
			throw new RegisterException(Messages.Registration_unsettled);
		}
		List<Point> residuals = new ArrayList<>();
		for (int i = 0; i < designed.size(); i++) {
			residuals.add(measured.get(i).minus(map.apply(designed.get(i))));
		}
		Registration fitted = new Registration(kind, map, designed, measured, residuals, Marks.conditioning(designed),
				List.of());
		return new Registration(kind, map, designed, measured, residuals, fitted.conditioning(), FitChecks.of(fitted, numbers));
	}

	private static void check(FitKind kind, List<Point> designed, List<Point> measured, List<Integer> numbers)
			throws RegisterException {
		if (designed.size() != measured.size()) {
			throw new RegisterException(NLS.bind(Messages.Registration_counts, designed.size(), measured.size()));
		}
		if (designed.size() < kind.leastMarks()) {
			throw new RegisterException(NLS.bind(Messages.Registration_few, kind.leastMarks(), designed.size()));
		}
		for (List<Point> marks : List.of(designed, measured)) {
			checkApart(marks, numbers);
			if (kind == FitKind.AFFINE && Marks.conditioning(marks) < LEAST_CONDITIONING
					|| kind == FitKind.PROJECTIVE && !holdsAPlane(marks)) {
				throw new RegisterException(kind == FitKind.AFFINE ? Messages.Registration_line : Messages.Registration_three);
			}
		}
	}

	private static void checkApart(List<Point> marks, List<Integer> numbers) throws RegisterException {
		for (int i = 0; i < marks.size(); i++) {
			if (!marks.get(i).isFinite()) {
				throw new RegisterException(NLS.bind(Messages.Registration_nowhere, numbers.get(i)));
			}
			for (int j = 0; j < i; j++) {
				if (marks.get(i).distance(marks.get(j)) < APART) {
					throw new RegisterException(NLS.bind(Messages.Registration_same, numbers.get(j), numbers.get(i)));
				}
			}
		}
	}

	/** Whether four of them have no three on a line. */
	private static boolean holdsAPlane(List<Point> marks) {
		int n = marks.size();
		for (int a = 0; a < n; a++) {
			for (int b = a + 1; b < n; b++) {
				for (int c = b + 1; c < n; c++) {
					for (int d = c + 1; d < n && stout(marks, a, b, c); d++) {
						if (stout(marks, a, b, d) && stout(marks, a, c, d) && stout(marks, b, c, d)) {
							return true;
						}
					}
				}
			}
		}
		return false;
	}

	private static boolean stout(List<Point> marks, int a, int b, int c) {
		return Marks.slenderness(marks.get(a), marks.get(b), marks.get(c)) >= LEAST_CONDITIONING;
	}

	/** Root of the mean of the squared residuals, mm. */
	public double rms() {
		return Math.sqrt(squares() / residuals.size());
	}

	/** The longest residual, mm. */
	public double max() {
		return residuals.stream().mapToDouble(Point::length).max().orElse(0);
	}

	private double squares() {
		return residuals.stream().mapToDouble(r -> r.dot(r)).sum();
	}

	/** Coordinates beyond those that the fit takes up; 0 means that small residuals prove nothing. */
	public int redundancy() {
		return kind.redundancy(designed.size());
	}

	/**
	 * The standard error of a measured coordinate as the residuals show it, mm; empty if the fit leaves none to judge it by.
	 */
	public OptionalDouble sigma() {
		return redundancy() > 0 ? OptionalDouble.of(Math.sqrt(squares() / redundancy())) : OptionalDouble.empty();
	}

	/** Scale, rotation and skew; of a projective map those at the centroid of the marks. */
	public Lie lie() {
		return Lie.of(map.linear(Marks.centroid(designed)));
	}

	/**
	 * The standard error of a mapped place along x and y, mm in the measured frame.
	 *
	 * @param place on the design @param sigma the standard error of a measured coordinate, mm
	 */
	public Point errorAt(Point place, double sigma) {
		return new MarkPrecision(kind, map, designed).at(place).times(sigma);
	}

	/** Whether nothing may be cut by it. */
	public boolean isBlocked() {
		return findings.stream().anyMatch(RegisterFinding::isBlocking);
	}
}
