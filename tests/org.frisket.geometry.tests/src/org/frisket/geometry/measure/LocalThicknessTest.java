package org.frisket.geometry.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.fit.RegionFitter;
import org.frisket.geometry.fit.Samples;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

class LocalThicknessTest {

	private static final Tolerance TOLERANCE = new Tolerance(0.02);

	private static List<ThinPlace> thinnerThan(Region region, double width) {
		List<ThinPlace> places = LocalThickness.thinnerThan(region, width, TOLERANCE, Monitor.NONE);
		Geometry polygon = Polygons.of(region, 1e-4);
		for (ThinPlace place : places) {
			assertTrue(polygon.contains(Polygons.factory().createPoint(new Coordinate(place.place().x(),
					place.place().y()))), "place lies in the region");
			assertTrue(place.thickness() <= width);
		}
		return places;
	}

	@Test
	void piecesThatAreAlikeAreMeasuredOnceWhereverTheyLie() {
		Region bar = union(rectangle(0, 0, 20, 0.4));
		Map<Object, Object> known = new HashMap<>();
		int[] asked = new int[1];
		Memory memory = new Memory() {
			@Override
			@SuppressWarnings("unchecked")
			public <R> R get(Object key, Supplier<R> computation) {
				asked[0]++;
				return (R) known.computeIfAbsent(key, first -> computation.get());
			}
		};
		for (int i = 0; i < 5; i++) {
			Region moved = bar.transformed(Transform.translation(31.7 * i, -12.3 * i));
			List<ThinPlace> remembered = LocalThickness.thinnerThan(moved, 0.5, TOLERANCE, memory, Monitor.NONE);
			List<ThinPlace> anew = LocalThickness.thinnerThan(moved, 0.5, TOLERANCE, Monitor.NONE);
			assertEquals(1, remembered.size());
			assertEquals(0, remembered.get(0).place().distance(anew.get(0).place()), 1e-9);
			assertEquals(anew.get(0).thickness(), remembered.get(0).thickness(), 1e-9);
		}
		assertEquals(5, asked[0]);
		assertEquals(1, known.size());
		LocalThickness.thinnerThan(bar, 0.6, TOLERANCE, memory, Monitor.NONE);
		assertEquals(2, known.size(), "another width is another question");
	}

	private static ThinPlace thinnest(Region region) {
		return LocalThickness.thinnest(region, TOLERANCE, Monitor.NONE).orElseThrow();
	}

	/** Nothing below the limit less the tolerance, one place above the limit plus it. */
	private static void assertThicknessIs(double thickness, Region region) {
		assertEquals(List.of(), thinnerThan(region, thickness - TOLERANCE.mm()));
		List<ThinPlace> places = thinnerThan(region, thickness + TOLERANCE.mm());
		assertFalse(places.isEmpty());
		assertEquals(thickness, places.get(0).thickness(), TOLERANCE.mm());
		assertEquals(thickness, thinnest(region).thickness(), TOLERANCE.mm());
	}

	private static Region union(Geometry... parts) {
		Geometry union = parts[0];
		for (Geometry part : parts) {
			union = union.union(part);
		}
		return new RegionFitter(new Tolerance(0.001), 1e-4).fit(union, Monitor.NONE);
	}

	private static Geometry rectangle(double x, double y, double width, double height) {
		return Polygons.of(Samples.rectangle(x, y, width, height), 1);
	}

	private static Geometry disc(double x, double y, double radius) {
		return Polygons.of(Samples.region(Samples.circle(x, y, radius)), 1e-4);
	}

	@Test
	void equalPiecesEachHaveTheirOwnPlaces() {
		Region one = union(rectangle(0, 0, 10, 10), rectangle(9, 4, 12, 0.8), rectangle(20, 0, 10, 10));
		List<Piece> pieces = new ArrayList<>(one.pieces());
		for (double x : new double[] { 100.1, 200.7, 333.3 }) {
			pieces.addAll(one.transformed(Transform.translation(x, 7)).pieces());
		}
		List<ThinPlace> alone = thinnerThan(one, 1);
		List<Double> xs = thinnerThan(new Region(pieces), 1).stream().map(place -> place.place().x()).sorted().toList();
		assertEquals(1, alone.size());
		assertEquals(4, xs.size());
		double x = alone.get(0).place().x();
		assertEquals(x, xs.get(0), 1e-9);
		assertEquals(x + 100.1, xs.get(1), 1e-9);
		assertEquals(x + 333.3, xs.get(3), 1e-9);
	}

	@Test
	void rectangleIsAsThickAsItsShortSideCornersOrNot() {
		assertThicknessIs(4, Samples.rectangle(0, 0, 10, 4));
		assertThicknessIs(4, Samples.rectangle(0, 0, 10, 4).transformed(Transform.rotation(0.3)));
	}

	@Test
	void annulusIsAsThickAsTheDifferenceOfItsRadii() {
		assertThicknessIs(2, Samples.region(Samples.circle(0, 0, 7), Samples.circle(0, 0, 5)));
	}

	@Test
	void capsuleIsAsThickAsItsDiameter() {
		assertThicknessIs(3, union(rectangle(0, -1.5, 10, 3), disc(0, 0, 1.5), disc(10, 0, 1.5)));
	}

	@Test
	void triangleIsAsThickAsItsInscribedCircle() {
		assertThicknessIs(2 * 1.732051, Samples.regular(3, 6 / Math.sqrt(3)));
		assertThicknessIs(2, Samples.polygon(0, 0, 4, 0, 0, 3));
	}

	@Test
	void ellipseIsAsThickAsItsShortAxis() {
		assertThicknessIs(12, Samples.region(Samples.ellipse(0, 0, 10, 6)));
	}

	@Test
	void dumbbellIsFlaggedAtItsNeckExactlyWhenTheLimitExceedsIt() {
		Region dumbbell = union(disc(0, 0, 5), disc(20, 0, 5), rectangle(0, -0.4, 20, 0.8));
		assertThicknessIs(0.8, dumbbell);
		ThinPlace neck = thinnerThan(dumbbell, 1).get(0);
		assertTrue(neck.place().x() > 4 && neck.place().x() < 16);
		assertEquals(0, neck.place().y(), TOLERANCE.mm());
		// from disc to disc, less what the measuring disc reaches of it
		assertEquals(0.8 * 10, neck.area(), 0.4);
	}

	@Test
	void neckWithoutLengthIsFlagged() {
		Region bow = Samples.polygon(0, 0, 10, 4.5, 20, 0, 20, 10, 10, 5.5, 0, 10);
		assertThicknessIs(1, bow);
		assertEquals(0, thinnest(bow).place().distance(new Point(10, 5)), 0.1);
	}

	@Test
	void thinBridgeInARingIsFlagged() {
		assertThicknessIs(1, Samples.region(Samples.circle(0, 0, 10), Samples.circle(3, 0, 6)));
	}

	@Test
	void hairlineThatEndsFreelyIsFlaggedWithItsOwnThickness() {
		Region block = union(rectangle(0, 0, 10, 10), rectangle(10, 4, 6, 0.5));
		List<ThinPlace> places = thinnerThan(block, 1);
		assertEquals(1, places.size());
		assertEquals(0.5, places.get(0).thickness(), TOLERANCE.mm());
		assertTrue(places.get(0).place().x() > 10);
		assertEquals(3, places.get(0).area(), 0.05);
	}

	@Test
	void strokeCountsOnceItIsLongerThanWide() {
		assertEquals(1, thinnerThan(union(rectangle(0, 0, 10, 10), rectangle(10, 4, 0.9, 0.5)), 1).size());
		assertEquals(0, thinnerThan(union(rectangle(0, 0, 10, 10), rectangle(10, 4, 0.3, 0.5)), 1).size());
	}

	@Test
	void pieceThinnerThanTheLimitIsOnePlaceWithAllItsArea() {
		List<ThinPlace> places = thinnerThan(Samples.rectangle(0, 0, 10, 0.5), 1);
		assertEquals(1, places.size());
		assertEquals(5, places.get(0).area(), 1e-6);
		assertEquals(0.5, places.get(0).thickness(), TOLERANCE.mm());
	}

	@Test
	void cornersOfLettersAreNoThinPlaces() {
		// right angles, a 60 and a 40 degree tip
		assertEquals(List.of(), thinnerThan(Samples.rectangle(0, 0, 20, 20), 3));
		assertEquals(List.of(), thinnerThan(Samples.regular(3, 20), 3));
		assertEquals(List.of(), thinnerThan(wedge(40), 3));
	}

	@Test
	void needleTipsAreThinPlaces() {
		// the removed tip of a wedge of full angle 2A has the area r^2 (cot A - (pi/2 - A))
		double r = 0.5;
		double half = Math.toRadians(10);
		List<ThinPlace> places = thinnerThan(wedge(20), 2 * r);
		assertEquals(1, places.size());
		assertEquals(r * r * (1 / Math.tan(half) - (Math.PI / 2 - half)), places.get(0).area(), 0.05);
		assertTrue(places.get(0).thickness() < 2 * r / 4);
	}

	/** An isosceles triangle with its tip at the origin. */
	private static Region wedge(double degrees) {
		double half = Math.toRadians(degrees) / 2;
		return Samples.polygon(0, 0, 30 * Math.cos(half), 30 * Math.sin(half), 30 * Math.cos(half),
				-30 * Math.sin(half));
	}

	@Test
	void everyThinPieceIsFoundThinnestFirst() {
		List<ThinPlace> places = thinnerThan(Samples.both(Samples.rectangle(0, 0, 9, 0.7),
				Samples.both(Samples.rectangle(0, 5, 9, 0.3), Samples.rectangle(0, 10, 9, 9))), 1);
		assertEquals(2, places.size());
		assertEquals(0.3, places.get(0).thickness(), TOLERANCE.mm());
		assertEquals(0.7, places.get(1).thickness(), TOLERANCE.mm());
	}

	@Test
	void taperedStrokeIsMeasuredWhereTheLimitCutsIt() {
		// a bar from 2 mm down to 0.6 mm and up again, smooth: an hourglass of circular flanks
		List<Point> corners = new ArrayList<>();
		for (int i = 0; i <= 400; i++) {
			double x = i / 40.0;
			corners.add(new Point(x, 0.3 + (x - 5) * (x - 5) * 0.1));
		}
		for (int i = 400; i >= 0; i--) {
			double x = i / 40.0;
			corners.add(new Point(x, -0.3 - (x - 5) * (x - 5) * 0.1));
		}
		Region hourglass = Samples.region(Contour.polygon(corners));
		assertThicknessIs(0.6, hourglass);
		assertEquals(0, thinnest(hourglass).place().distance(new Point(5, 0)), 0.2);
	}

	@Test
	void emptyRegionHasNoThickness() {
		assertTrue(LocalThickness.thinnest(Region.EMPTY, TOLERANCE, Monitor.NONE).isEmpty());
		assertEquals(List.of(), LocalThickness.thinnerThan(Region.EMPTY, 1, TOLERANCE, Monitor.NONE));
	}
}
