package org.frisket.geometry.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.fit.RegionFitter;
import org.frisket.geometry.fit.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;

/**
 * Shapes whose local thickness (Hildebrand and Rüegsegger 1997) is known from plane geometry: the diameter of the
 * largest disc that passes.
 */
class StrokeWidthsTest {

	private static final Tolerance TOLERANCE = new Tolerance(0.02);

	private static List<StrokeWidths.Width> thinnerThan(Region region, double width) {
		return ThinStrokes.of(region, width, TOLERANCE, Memory.NONE, Monitor.NONE);
	}

	private static StrokeWidths.Width thinnest(Region region) {
		return StrokeWidths.of(region.pieces().get(0), TOLERANCE, Monitor.NONE).thinnest(TOLERANCE);
	}

	private static void assertThicknessIs(double thickness, Region region) {
		assertEquals(List.of(), thinnerThan(region, thickness - TOLERANCE.mm()));
		List<StrokeWidths.Width> places = thinnerThan(region, thickness + TOLERANCE.mm());
		assertFalse(places.isEmpty());
		assertEquals(thickness, places.get(0).mm(), TOLERANCE.mm());
		assertEquals(thickness, thinnest(region).mm(), TOLERANCE.mm());
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

	@ParameterizedTest
	@ValueSource(doubles = { 0, 0.3, 1.1, 2.5 })
	void rectangleIsAsThickAsItsShortSide(double turn) {
		assertThicknessIs(4, Samples.rectangle(0, 0, 10, 4).transformed(Transform.rotation(turn)));
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

	@ParameterizedTest
	@ValueSource(doubles = { 0.3, 0.8, 1.7 })
	void dumbbellIsFlaggedAtItsNeckExactlyWhenTheLimitExceedsIt(double neck) {
		Region dumbbell = union(disc(0, 0, 5), disc(20, 0, 5), rectangle(0, -neck / 2, 20, neck));
		assertThicknessIs(neck, dumbbell);
		List<StrokeWidths.Width> places = thinnerThan(dumbbell, neck + 0.2);
		assertEquals(1, places.size());
		assertEquals(0, places.get(0).place().y(), TOLERANCE.mm());
	}

	@Test
	void neckWithoutLengthIsFlagged() {
		Region bow = Samples.polygon(0, 0, 10, 4.5, 20, 0, 20, 10, 10, 5.5, 0, 10);
		assertThicknessIs(1, bow);
		assertEquals(0, thinnest(bow).place().distance(new Point(10, 5)), 0.1);
	}

	@Test
	void thinBridgeInARingIsFlaggedThoughNothingIsParted() {
		assertThicknessIs(1, Samples.region(Samples.circle(0, 0, 10), Samples.circle(3, 0, 6)));
	}

	@Test
	void hairlineThatEndsFreelyIsFlaggedWithItsOwnThickness() {
		List<StrokeWidths.Width> places = thinnerThan(union(rectangle(0, 0, 10, 10), rectangle(10, 4, 6, 0.5)), 1);
		assertEquals(1, places.size());
		assertEquals(0.5, places.get(0).mm(), TOLERANCE.mm());
		assertTrue(places.get(0).place().x() > 10 - TOLERANCE.mm());
	}

	@Test
	void strokeCountsOnceItIsLongerThanWide() {
		assertEquals(1, thinnerThan(union(rectangle(0, 0, 10, 10), rectangle(10, 4, 0.9, 0.5)), 1).size());
		assertEquals(0, thinnerThan(union(rectangle(0, 0, 10, 10), rectangle(10, 4, 0.3, 0.5)), 1).size());
	}

	@ParameterizedTest
	@ValueSource(doubles = { 36, 40, 60, 90, 100 })
	void cornersAreNoThinPlaces(double degrees) {
		assertEquals(List.of(), thinnerThan(wedge(degrees), 3));
	}

	@ParameterizedTest
	@ValueSource(doubles = { 5, 12, 20, 26 })
	void needleTipsAreThinPlacesAtEverySize(double degrees) {
		List<StrokeWidths.Width> places = thinnerThan(wedge(degrees), 1);
		assertEquals(1, places.size());
		assertTrue(places.get(0).mm() < 0.25);
		assertEquals(0.1, StrokeWidths.of(wedge(degrees).pieces().get(0), TOLERANCE, Monitor.NONE).thinnest(0.1, 0.02)
				.mm());
	}

	/** An isosceles triangle with its tip at the origin. */
	private static Region wedge(double degrees) {
		double half = Math.toRadians(degrees) / 2;
		return Samples.polygon(0, 0, 30 * Math.cos(half), 30 * Math.sin(half), 30 * Math.cos(half),
				-30 * Math.sin(half));
	}

	@Test
	void everyThinPieceIsFoundThinnestFirst() {
		List<StrokeWidths.Width> places = thinnerThan(Samples.both(Samples.rectangle(0, 0, 9, 0.7),
				Samples.both(Samples.rectangle(0, 5, 9, 0.3), Samples.rectangle(0, 10, 9, 9))), 1);
		assertEquals(2, places.size());
		assertEquals(0.3, places.get(0).mm(), TOLERANCE.mm());
		assertEquals(0.7, places.get(1).mm(), TOLERANCE.mm());
	}

	@Test
	void widestIsTheLargestInscribedDisc() {
		assertEquals(2 * 1.732051,
				StrokeWidths.of(Samples.regular(3, 6 / Math.sqrt(3)).pieces().get(0), TOLERANCE, Monitor.NONE).widest(), 0.02);
		assertEquals(12, StrokeWidths.of(Samples.region(Samples.ellipse(0, 0, 10, 6)).pieces().get(0), TOLERANCE,
				Monitor.NONE).widest(), 0.02);
	}

	@Test
	void emptyRegionHasNoThinPlaces() {
		assertEquals(List.of(), thinnerThan(Region.EMPTY, 1));
	}
}
