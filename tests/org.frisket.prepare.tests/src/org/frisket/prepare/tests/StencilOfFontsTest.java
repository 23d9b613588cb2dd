package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.stencil.HeldIsland;
import org.frisket.geometry.stencil.Stencil;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.typography.FontFace;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/**
 * Stencils of whole fonts, measured by JTS alone on what is left of the sheet: nothing falls out, and a disc as wide as
 * the bridges gets from every island to the outside.
 */
class StencilOfFontsTest {

	private static final double WIDTH = 1;
	private static final String LETTERS = "ABDOPQRabdegopq0689&@%$\u00C5\u00D8\u00DF\u00E4";

	@ParameterizedTest
	@ValueSource(strings = { "Liberation Sans", "Liberation Serif", "Liberation Mono Bold", "DejaVu Serif",
			"DejaVu Sans Bold Oblique" })
	void nothingFallsOutAndBridgesAreAsWideAsAsked(String font) throws Exception {
		FontFace face = FontLibraries.installed().find(font);
		for (int i = 0; i < LETTERS.length(); i++) {
			String letter = LETTERS.substring(i, i + 1);
			Region openings = new OutlineCleaner().clean(
					TextSetter.set(letter, face, Setting.ofCapHeight(30), Monitor.NONE).outline(), FillRule.NON_ZERO,
					Tolerance.DEFAULT, Monitor.NONE).region();
			Stencil stencil = Stencil.of(openings, WIDTH, List.of(), Tolerance.DEFAULT, Monitor.NONE);
			Geometry cut = Polygons.of(stencil.region(), 0.002);
			assertTrue(cut.isValid(), letter);
			Envelope around = cut.getEnvelopeInternal();
			around.expandBy(10);
			Geometry sheet = Polygons.factory().toGeometry(around).difference(cut);
			assertEquals(1, sheet.getNumGeometries(), letter + " of " + font);
			Geometry reached = sheet.buffer(-(WIDTH / 2 - 2 * Tolerance.DEFAULT.mm()));
			for (HeldIsland island : stencil.islands()) {
				// of what the disc can reach within the island, which may have an opening of its own
				Geometry inside = Polygons.factory().createPolygon(Polygons.ring(island.edge(), 0.002)).buffer(-WIDTH / 2)
						.intersection(reached);
				Point middle = inside.getInteriorPoint();
				if (inside.getArea() > 0.01) {
					Point outside = Polygons.factory().createPoint(new Coordinate(around.getMinX() + 2, around.getMinY() + 2));
					assertTrue(areJoined(reached, middle, outside), letter + " of " + font);
				}
			}
		}
	}

	private static boolean areJoined(Geometry parts, Point one, Point other) {
		for (int i = 0; i < parts.getNumGeometries(); i++) {
			Geometry part = parts.getGeometryN(i);
			if (part.distance(one) < 1e-6 && part.distance(other) < 1e-6) {
				return true;
			}
		}
		return false;
	}
}
