package org.frisket.print.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.AffineTransformationFactory;

/**
 * Fits against figures worked out apart from this code: by the formulas of Umeyama (IEEE TPAMI 13(4):376-380, 1991), by
 * singular values, and by a simulation of their errors; against JTS where that can do the same.
 */
class RegistrationTest {

	static final List<Point> SHEET = points(10, 10, 290, 10, 290, 190, 10, 190);
	static final List<Point> MEASURED = points(11.48, 9.29, 291.94, 11.79, 290.43, 192.16, 9.80, 189.65);
	private static final Point MIDDLE = new Point(150, 100);

	static List<Point> points(double... coordinates) {
		List<Point> points = new ArrayList<>();
		for (int i = 0; i < coordinates.length; i += 2) {
			points.add(new Point(coordinates[i], coordinates[i + 1]));
		}
		return points;
	}

	private static void assertPoint(double x, double y, Point actual, double within) {
		assertEquals(x, actual.x(), within);
		assertEquals(y, actual.y(), within);
	}

	private static void assertRows(Registration fit, double within, double... rows) {
		for (int i = 0; i < rows.length; i++) {
			assertEquals(rows[i], fit.map().rows()[i], within, "number " + i);
		}
	}

	private static List<String> ids(Registration fit) {
		return fit.findings().stream().map(RegisterFinding::id).toList();
	}

	private static Registration fit(FitKind kind, List<Point> measured) throws RegisterException {
		return Registration.fit(kind, SHEET, measured);
	}

	@Test
	void fourMarksBySimilarity() throws RegisterException {
		Registration fit = fit(FitKind.SIMILARITY, MEASURED);
		assertEquals(0.510145, Math.toDegrees(fit.lie().rotation()), 5e-7);
		assertEquals(1.002009934, fit.lie().scale(), 5e-10);
		assertEquals(1.002009934, fit.lie().scaleX(), 5e-10);
		assertEquals(0, fit.lie().skew(), 1e-12);
		assertPoint(1.509116, -0.812744, fit.map().apply(Point.ORIGIN), 5e-7);
		assertPoint(0.0404, -0.0062, fit.residuals().get(0), 5e-5);
		assertPoint(-0.0513, -0.0042, fit.residuals().get(1), 5e-5);
		assertPoint(0.0446, 0.0112, fit.residuals().get(2), 5e-5);
		assertPoint(-0.0337, -0.0008, fit.residuals().get(3), 5e-5);
		assertEquals(0.043499, fit.rms(), 5e-7);
		assertEquals(0.051434, fit.max(), 5e-7);
		assertEquals(0.642857, fit.conditioning(), 5e-7);
		assertEquals(4, fit.redundancy());
		assertPoint(150.9125, 100.7225, fit.map().apply(MIDDLE), 1e-9);
		assertEquals(List.of(), fit.findings());
	}

	@Test
	void fourMarksByTheOtherFits() throws RegisterException {
		Registration rigid = fit(FitKind.RIGID, MEASURED);
		assertPoint(1.808804, -0.609074, rigid.map().apply(Point.ORIGIN), 5e-7);
		assertEquals(0.337336, rigid.rms(), 5e-7);
		assertEquals(5, rigid.redundancy());

		Registration affine = fit(FitKind.AFFINE, MEASURED);
		assertRows(affine, 5e-10, 1.001946429, -0.008861111, 1.506646825, 0.008946429, 1.002027778, -0.822242063, 0, 0, 1);
		assertEquals(0.042573, affine.rms(), 5e-7);
		assertEquals(2, affine.redundancy());
		assertPoint(150.9125, 100.7225, affine.map().apply(MIDDLE), 1e-9);

		Registration projective = fit(FitKind.PROJECTIVE, MEASURED);
		assertRows(projective, 5e-10, 1.001558442, -0.009365997, 1.557669781, 0.008926277, 1.001326083, -0.812851960);
		assertEquals(-1.678803e-7, projective.map().h31(), 5e-14);
		assertEquals(-3.366730e-6, projective.map().h32(), 5e-13);
		assertEquals(0, projective.max(), 1e-9);
		assertPoint(150.909444, 100.695135, projective.map().apply(MIDDLE), 5e-7);
		assertEquals(0, projective.redundancy());
		assertTrue(projective.sigma().isEmpty());
		assertEquals(List.of("no-redundancy"), ids(projective));
	}

	@Test
	void aSmallSheetSkewed() throws RegisterException {
		List<Point> designed = points(0, 0, 100, 0, 100, 60, 0, 60);
		List<Point> measured = points(0, 0, 100, 1, 98.5, 61, -1, 60);
		Registration similar = Registration.fit(FitKind.SIMILARITY, designed, measured);
		assertEquals(0.738579, Math.toDegrees(similar.lie().rotation()), 5e-7);
		assertEquals(0.998244702, similar.lie().scale(), 5e-10);
		assertPoint(-0.147059, -0.088235, similar.map().apply(Point.ORIGIN), 5e-7);
		assertEquals(0.312132, similar.rms(), 5e-7);
		Registration affine = Registration.fit(FitKind.AFFINE, designed, measured);
		assertRows(affine, 5e-8, 0.9975, -0.0208333, 0.125, 0.01, 1, 0);
		assertPoint(-0.125, 0, affine.residuals().get(0), 1e-12);
		assertPoint(0.125, 0, affine.residuals().get(1), 1e-12);
		assertEquals(0.125, affine.rms(), 1e-12);
	}

	@Test
	void aSquareSeenFromAslant() throws RegisterException {
		Registration fit = Registration.fit(FitKind.PROJECTIVE, points(0, 0, 1, 0, 1, 1, 0, 1),
				points(0, 0, 2, 0, 1.5, 1, 0.5, 1));
		assertRows(fit, 1e-12, 2, 1, 0, 0, 2, 0, 0, 1, 1);
		assertPoint(1, 2.0 / 3, fit.map().apply(new Point(0.5, 0.5)), 1e-12);
		assertPoint(0.5, 0.5, fit.map().inverse().apply(new Point(1, 2.0 / 3)), 1e-12);
	}

	@Test
	void threeMarksGiveTheAffineMapOfJts() throws RegisterException {
		List<Point> designed = points(12, 17, 205, 31, 88, 160);
		List<Point> measured = points(10.2, 18.1, 203.9, 36.4, 84.0, 161.5);
		Registration fit = Registration.fit(FitKind.AFFINE, designed, measured);
		AffineTransformation jts = AffineTransformationFactory.createFromControlVectors(coordinates(designed),
				coordinates(measured));
		double[] rows = jts.getMatrixEntries();
		assertRows(fit, 1e-9, rows);
	}

	private static Coordinate[] coordinates(List<Point> points) {
		return points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
	}

	@ParameterizedTest
	@EnumSource(FitKind.class)
	void whatASheetDidIsFoundAgain(FitKind kind) throws RegisterException {
		Random random = new Random(20261130);
		for (int round = 0; round < 200; round++) {
			Projection truth = truth(kind, random);
			List<Point> designed = new ArrayList<>(SHEET);
			designed.add(new Point(30 + 240 * random.nextDouble(), 30 + 140 * random.nextDouble()));
			List<Point> measured = designed.stream().map(truth::apply).toList();
			Registration fit = Registration.fit(kind, designed, measured);
			assertEquals(0, fit.max(), 1e-8);
			assertFalse(fit.isBlocked(), ids(fit).toString());
			Point anywhere = new Point(300 * random.nextDouble(), 200 * random.nextDouble());
			assertEquals(0, fit.map().apply(anywhere).distance(truth.apply(anywhere)), 1e-8);
		}
	}

	private static Projection truth(FitKind kind, Random random) {
		double scale = kind == FitKind.RIGID ? 1 : 0.9 + 0.2 * random.nextDouble();
		double stretch = kind.compareTo(FitKind.SIMILARITY) > 0 ? 0.95 + 0.1 * random.nextDouble() : 1;
		Transform affine = Transform.scaling(scale, scale * stretch).then(Transform.rotation(7 * random.nextDouble()))
				.then(Transform.translation(90 * random.nextDouble(), -40 * random.nextDouble()));
		Projection tilt = kind == FitKind.PROJECTIVE ? new Projection(1, 0, 0, 0, 1, 0, 4e-4 * random.nextDouble(),
				-4e-4 * random.nextDouble(), 1) : Projection.IDENTITY;
		return tilt.then(Projection.of(affine));
	}

	/** With a noise of 0.1 mm: by the formula at the centre, at a mark and at the corner of the sheet, for a similarity. */
	@Test
	void theErrorOfAPlaceIsThatOfTheFormula() throws RegisterException {
		Registration fit = Registration.fit(FitKind.SIMILARITY, SHEET, SHEET);
		assertPoint(0.05, 0.05, fit.errorAt(MIDDLE, 0.1), 1e-9);
		assertPoint(0.0707, 0.0707, fit.errorAt(SHEET.get(0), 0.1), 5e-5);
		assertPoint(0.0737, 0.0737, fit.errorAt(Point.ORIGIN, 0.1), 5e-5);
	}

	@ParameterizedTest
	@EnumSource(FitKind.class)
	void theErrorOfAPlaceIsThatOfASimulation(FitKind kind) throws RegisterException {
		List<Point> designed = points(10, 10, 290, 10, 290, 190, 10, 190, 150, 20, 60, 150);
		// stretched so little that no other order of the marks is looked for, which takes its time
		Projection truth = truth(kind == FitKind.AFFINE ? FitKind.SIMILARITY : kind, new Random(3));
		List<Point> exact = designed.stream().map(truth::apply).toList();
		double sigma = 0.05;
		List<Point> places = List.of(Point.ORIGIN, MIDDLE, new Point(250, 30));
		Registration fit = Registration.fit(kind, designed, exact);
		Random random = new Random(77);
		int rounds = 2000;
		double[] squares = new double[2 * places.size()];
		double variance = 0;
		for (int round = 0; round < rounds; round++) {
			List<Point> noisy = exact.stream()
					.map(p -> p.plus(new Point(random.nextGaussian() * sigma, random.nextGaussian() * sigma))).toList();
			Registration one = Registration.fit(kind, designed, noisy);
			variance += one.sigma().orElseThrow() * one.sigma().orElseThrow() / rounds;
			for (int i = 0; i < places.size(); i++) {
				Point error = one.map().apply(places.get(i)).minus(truth.apply(places.get(i)));
				squares[2 * i] += error.x() * error.x() / rounds;
				squares[2 * i + 1] += error.y() * error.y() / rounds;
			}
		}
		// 2000 rounds know a standard error within 1.6 %; four times that is allowed
		assertEquals(sigma, Math.sqrt(variance), 0.02 * sigma);
		for (int i = 0; i < places.size(); i++) {
			Point predicted = fit.errorAt(places.get(i), sigma);
			assertEquals(predicted.x(), Math.sqrt(squares[2 * i]), 0.064 * predicted.x(), kind + " x at " + places.get(i));
			assertEquals(predicted.y(), Math.sqrt(squares[2 * i + 1]), 0.064 * predicted.y(), kind + " y at " + places.get(i));
		}
	}

	@Test
	void moreMarksThanNeededMakeTheDistancesSmallNotAnAlgebraicError() throws RegisterException {
		List<Point> designed = points(10, 10, 290, 10, 290, 190, 10, 190, 150, 100, 70, 40);
		Random random = new Random(5);
		Projection truth = truth(FitKind.PROJECTIVE, random);
		List<Point> measured = designed.stream().map(truth::apply)
				.map(p -> p.plus(new Point(random.nextGaussian() * 0.5, random.nextGaussian() * 0.5))).toList();
		Registration fit = Registration.fit(FitKind.PROJECTIVE, designed, measured);
		double least = fit.rms();
		double[] h = fit.map().rows();
		for (int k = 0; k < 8; k++) {
			for (double by : new double[] { 1 - 1e-5, 1 + 1e-5 }) {
				double[] other = h.clone();
				other[k] *= by;
				Projection map = new Projection(other[0], other[1], other[2], other[3], other[4], other[5], other[6], other[7],
						other[8]);
				double sum = 0;
				for (int i = 0; i < designed.size(); i++) {
					double distance = map.apply(designed.get(i)).distance(measured.get(i));
					sum += distance * distance;
				}
				assertTrue(Math.sqrt(sum / designed.size()) >= least, "number " + k);
			}
		}
	}

	private static void assertRefused(String part, FitKind kind, List<Point> designed, List<Point> measured) {
		String message = assertThrows(RegisterException.class, () -> Registration.fit(kind, designed, measured)).getMessage();
		assertTrue(message.contains(part), message);
	}

	@Test
	void marksThatSettleNothingAreRefused() throws RegisterException {
		List<Point> line = points(0, 0, 100, 0, 200, 0, 300, 0);
		List<Point> nearly = points(0, 0, 100, 0, 200, 0, 300, 1);
		List<Point> twice = points(0, 0, 100, 0, 100, 0, 0, 60);
		List<Point> three = points(0, 0, 100, 0, 200, 0, 100, 80);
		assertRefused("designed marks", FitKind.RIGID, SHEET, points(0, 0, 1, 1));
		assertRefused("needs 2 marks, not 1", FitKind.SIMILARITY, points(1, 1), points(2, 2));
		assertRefused("needs 3 marks, not 2", FitKind.AFFINE, points(1, 1, 5, 6), points(2, 2, 9, 9));
		assertRefused("needs 4 marks, not 3", FitKind.PROJECTIVE, points(1, 1, 5, 6, 9, 0), points(2, 2, 9, 9, 1, 5));
		assertRefused("on a line", FitKind.AFFINE, line, line);
		assertRefused("on a line", FitKind.AFFINE, nearly, nearly);
		assertRefused("on a line", FitKind.AFFINE, SHEET, nearly);
		assertRefused("no three", FitKind.PROJECTIVE, three, three);
		assertRefused("2 and 3 are at the same place", FitKind.RIGID, twice, SHEET);
		assertRefused("2 and 3 are at the same place", FitKind.RIGID, SHEET, twice);
		assertRefused("no place", FitKind.RIGID, SHEET, points(0, 0, Double.NaN, 0, 1, 1, 2, 2));
		assertEquals(0.002449, Registration.fit(FitKind.SIMILARITY, nearly, nearly).conditioning(), 5e-7);
		assertEquals(0, Registration.fit(FitKind.SIMILARITY, line, line).max(), 1e-9);
	}

	@ParameterizedTest
	@EnumSource(FitKind.class)
	void aSheetOnItsFaceIsCalledMirrored(FitKind kind) throws RegisterException {
		Transform over = Transform.scaling(-1, 1).then(Transform.rotation(0.4)).then(Transform.translation(300, 20));
		// not symmetric, so that no other order of the marks explains it
		List<Point> designed = points(10, 10, 290, 10, 290, 190, 60, 190);
		Registration fit = Registration.fit(kind, designed, designed.stream().map(over::apply).toList());
		assertTrue(ids(fit).contains("sheet-mirrored"), ids(fit).toString());
		assertTrue(fit.isBlocked());
	}

	@ParameterizedTest
	@EnumSource(FitKind.class)
	void marksInAnotherOrderAreNamed(FitKind kind) throws RegisterException {
		List<Point> shifted = List.of(MEASURED.get(1), MEASURED.get(2), MEASURED.get(3), MEASURED.get(0));
		Registration fit = fit(kind, shifted);
		assertTrue(fit.isBlocked());
		RegisterFinding finding = fit.findings().stream().filter(f -> f.id().equals("marks-mispaired")).findFirst()
				.orElseThrow();
		assertTrue(finding.message().contains("4, 1, 2, 3"), finding.message());
		assertFalse(ids(fit).contains("sheet-mirrored"));
		List<Point> swapped = List.of(MEASURED.get(1), MEASURED.get(0), MEASURED.get(2), MEASURED.get(3));
		assertTrue(fit(kind, swapped).findings().stream().anyMatch(f -> f.message().contains("2, 1, 3, 4")));
	}

	@Test
	void manyMarksThatBeginElsewhereAreNamedToo() throws RegisterException {
		List<Point> designed = new ArrayList<>();
		for (int i = 0; i < 9; i++) {
			designed.add(new Point(150 + 100 * Math.cos(i * 0.6), 100 + 70 * Math.sin(i * 0.6)));
		}
		List<Point> measured = new ArrayList<>(designed.subList(3, 9));
		measured.addAll(designed.subList(0, 3));
		Registration fit = Registration.fit(FitKind.SIMILARITY, designed, measured);
		assertTrue(fit.findings().get(0).message().contains("7, 8, 9, 1, 2, 3, 4, 5, 6"), fit.findings().toString());
	}

	@Test
	void oneMisreadMarkIsNamed() throws RegisterException {
		List<Point> designed = points(10, 10, 290, 10, 290, 190, 10, 190, 150, 20);
		List<Point> measured = new ArrayList<>(designed);
		measured.set(2, new Point(291.5, 190.4));
		for (FitKind kind : List.of(FitKind.RIGID, FitKind.SIMILARITY, FitKind.AFFINE)) {
			Registration fit = Registration.fit(kind, designed, measured);
			assertEquals(List.of("mark-off"), ids(fit), kind.toString());
			assertTrue(fit.findings().get(0).message().startsWith("Mark 3 "), fit.findings().get(0).message());
			assertEquals(designed.get(2), fit.findings().get(0).place());
			assertFalse(fit.isBlocked());
		}
		// with a projective fit one of five marks leaves nothing to judge the other four by
		assertEquals(List.of(), ids(Registration.fit(FitKind.PROJECTIVE, designed, measured)));
	}

	@Test
	void aMapThatTurnsTheSheetInsideOutIsBlocked() throws RegisterException {
		List<Point> designed = points(0, 0, 100, 0, 100, 60, 0, 60);
		Registration fit = Registration.fit(FitKind.PROJECTIVE, designed, points(0, 0, 100, 0, 100, 60, 88, 14));
		assertTrue(ids(fit).contains("sheet-folded"), ids(fit).toString());
		assertTrue(fit.isBlocked());
		assertEquals(0, fit.max(), 1e-9);
	}

	@Test
	void aTurnedSheetIsNoMixUp() throws RegisterException {
		Transform round = Transform.rotation(Math.PI).then(Transform.translation(300, 200));
		Registration fit = fit(FitKind.SIMILARITY, MEASURED.stream().map(round::apply).toList());
		assertEquals(List.of(), fit.findings());
		assertEquals(180, Math.abs(Math.toDegrees(fit.lie().rotation())), 1);
	}
}
