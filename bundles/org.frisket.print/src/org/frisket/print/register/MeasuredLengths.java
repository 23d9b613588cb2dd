package org.frisket.print.register;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Length;
import org.frisket.geometry.Point;

/**
 * Marks measured with a rule: not where they are, but how far apart. From enough lengths their places follow, but for where
 * the sheet lies; and, as lengths are the same in a mirror, on the side of the design. Found by damped Gauss-Newton steps
 * (Levenberg 1944, Marquardt 1963; from memory) from the designed places on, which printed marks are near to.
 *
 * @param places    of the marks, mm; the first is where it was designed, the second in the designed direction from it
 * @param lengths   that were measured
 * @param residuals measured minus found length, mm, one for each of them
 */
public record MeasuredLengths(List<Point> places, List<Between> lengths, List<Double> residuals) {

	/** A rule is read to half a millimetre; common practice, no source. */
	private static final double READ_TO = 0.5;

	private static final int ROUNDS = 200;
	private static final double SETTLED = 1e-12;
	/** Of the largest step of elimination: a mark that nothing holds. */
	private static final double LOOSE = 1e-6;
	private static final double LESS_DAMPING = 0.2;
	private static final double MORE_DAMPING = 8;
	/** A mark moves freely with the sheet: as a whole it has this many freedoms. */
	private static final int OF_THE_SHEET = 3;
	private static final double LEAST_LENGTH = 0.01;

	/** The distance between two marks. @param one its index from 0 @param other the other's @param mm the distance */
	public record Between(int one, int other, double mm) {

		/** Which marks, counted from 1, the lower first. */
		String pair() {
			return (Math.min(one, other) + 1) + "-" + (Math.max(one, other) + 1);
		}
	}

	public MeasuredLengths {
		places = List.copyOf(places);
		lengths = List.copyOf(lengths);
		residuals = List.copyOf(residuals);
	}

	/** Lengths beyond those that are needed; 0 means that small residuals prove nothing. */
	public int redundancy() {
		return residuals.size() - (2 * places.size() - OF_THE_SHEET);
	}

	/** What is doubtful: lengths that cannot all be right. Which of them is wrong, only measuring again tells. */
	public List<RegisterFinding> findings() {
		int worst = 0;
		for (int i = 1; i < residuals.size(); i++) {
			worst = Math.abs(residuals.get(i)) > Math.abs(residuals.get(worst)) ? i : worst;
		}
		// few lengths to spare share an error out, so that the residuals are smaller than it is
		double sigma = redundancy() > 0 ? rms() * Math.sqrt((double) residuals.size() / redundancy()) : 0;
		if (sigma <= READ_TO) {
			return List.of();
		}
		double off = Math.abs(residuals.get(worst));
		Between length = lengths.get(worst);
		return List.of(RegisterFinding.measured("lengths-disagree", RegisterFinding.Severity.CAUTION,
				places.get(length.one()), sigma, READ_TO,
				NLS.bind(Messages.MeasuredLengths_disagree, length.pair(), Length.text(off, 2)),
				Messages.MeasuredLengths_disagreeCure));
	}

	/** Root of the mean of the squared residuals, mm. */
	public double rms() {
		return Math.sqrt(residuals.stream().mapToDouble(r -> r * r).average().orElse(0));
	}

	/**
	 * The places of marks.
	 *
	 * @throws RegisterException if the lengths leave a mark loose, or name one that is not there
	 */
	public static MeasuredLengths of(List<Point> designed, List<Between> lengths) throws RegisterException {
		check(designed.size(), lengths);
		double[] x = start(designed, lengths);
		int freedoms = 2 * designed.size() - OF_THE_SHEET;
		if (LeastSquares.rank(directions(x, lengths), LOOSE) < freedoms) {
			throw new RegisterException(Messages.MeasuredLengths_loose);
		}
		settle(x, lengths);
		List<Double> residuals = Arrays.stream(errors(x, lengths)).boxed().toList();
		return new MeasuredLengths(laid(x, designed), lengths, residuals);
	}

	private static void check(int marks, List<Between> lengths) throws RegisterException {
		Set<List<Integer>> pairs = new HashSet<>();
		for (Between each : lengths) {
			int lower = Math.min(each.one(), each.other());
			int higher = Math.max(each.one(), each.other());
			String pair = each.pair();
			if (lower < 0 || higher >= marks || lower == higher) {
				throw new RegisterException(NLS.bind(Messages.MeasuredLengths_unknown, pair, marks));
			}
			if (!(each.mm() > LEAST_LENGTH) || !Double.isFinite(each.mm())) {
				throw new RegisterException(NLS.bind(Messages.MeasuredLengths_short, pair, Length.text(each.mm(), 2)));
			}
			if (!pairs.add(List.of(lower, higher))) {
				throw new RegisterException(NLS.bind(Messages.MeasuredLengths_twice, pair));
			}
		}
		int needed = 2 * marks - OF_THE_SHEET;
		if (marks < 2 || lengths.size() < needed) {
			throw new RegisterException(NLS.bind(Messages.MeasuredLengths_few, new Object[] { marks, needed, lengths.size() }));
		}
	}

	/** The design, as large as the lengths are. */
	private static double[] start(List<Point> designed, List<Between> lengths) throws RegisterException {
		double is = 0;
		double was = 0;
		for (Between each : lengths) {
			double distance = designed.get(each.one()).distance(designed.get(each.other()));
			if (distance < LEAST_LENGTH) {
				throw new RegisterException(NLS.bind(Messages.Registration_same, each.one() + 1, each.other() + 1));
			}
			is += each.mm();
			was += distance;
		}
		double[] x = new double[2 * designed.size()];
		for (int i = 0; i < designed.size(); i++) {
			x[2 * i] = designed.get(i).x() * is / was;
			x[2 * i + 1] = designed.get(i).y() * is / was;
		}
		return x;
	}

	private static void settle(double[] x, List<Between> lengths) {
		double damping = 1e-3;
		double least = squares(x, lengths);
		for (int round = 0; round < ROUNDS; round++) {
			double[] step = LeastSquares.solve(damped(directions(x, lengths), damping),
					Arrays.copyOf(errors(x, lengths), lengths.size() + x.length));
			double[] next = x.clone();
			double furthest = 0;
			for (int i = 0; i < x.length; i++) {
				next[i] += step[i];
				furthest = Math.max(furthest, Math.abs(step[i]));
			}
			double squares = squares(next, lengths);
			if (squares <= least) {
				System.arraycopy(next, 0, x, 0, x.length);
				least = squares;
				damping = Math.max(1e-9, damping * LESS_DAMPING);
			} else {
				damping *= MORE_DAMPING;
			}
			if (furthest < SETTLED) {
				return;
			}
		}
	}

	/** Damping also holds the sheet, which the lengths leave free to move. */
	private static double[][] damped(double[][] rows, double damping) {
		int unknowns = rows[0].length;
		double[][] all = Arrays.copyOf(rows, rows.length + unknowns);
		for (int i = 0; i < unknowns; i++) {
			all[rows.length + i] = new double[unknowns];
			all[rows.length + i][i] = Math.sqrt(damping);
		}
		return all;
	}

	/** How the lengths change when the marks are moved. */
	private static double[][] directions(double[] x, List<Between> lengths) {
		double[][] rows = new double[lengths.size()][x.length];
		for (int k = 0; k < rows.length; k++) {
			Between each = lengths.get(k);
			Point unit = place(x, each.one()).minus(place(x, each.other())).unit();
			rows[k][2 * each.one()] = unit.x();
			rows[k][2 * each.one() + 1] = unit.y();
			rows[k][2 * each.other()] = -unit.x();
			rows[k][2 * each.other() + 1] = -unit.y();
		}
		return rows;
	}

	private static double[] errors(double[] x, List<Between> lengths) {
		return lengths.stream().mapToDouble(each -> each.mm() - place(x, each.one()).distance(place(x, each.other())))
				.toArray();
	}

	private static double squares(double[] x, List<Between> lengths) {
		return Arrays.stream(errors(x, lengths)).map(error -> error * error).sum();
	}

	private static Point place(double[] x, int mark) {
		return new Point(x[2 * mark], x[2 * mark + 1]);
	}

	private static List<Point> laid(double[] x, List<Point> designed) {
		Point origin = place(x, 0);
		Point along = place(x, 1).minus(origin).unit();
		Point designedAlong = designed.get(1).minus(designed.get(0)).unit();
		double cos = along.dot(designedAlong);
		double sin = along.cross(designedAlong);
		List<Point> laid = new ArrayList<>();
		for (int i = 0; i < designed.size(); i++) {
			Point p = place(x, i).minus(origin);
			laid.add(designed.get(0).plus(new Point(cos * p.x() - sin * p.y(), sin * p.x() + cos * p.y())));
		}
		return laid;
	}
}
