package org.frisket.geometry.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.frisket.geometry.Piece;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.fit.Samples;
import org.junit.jupiter.api.Test;

class MeasuresTest {

	private static final Tolerance TOLERANCE = new Tolerance(0.01);

	private static Piece only(Region region) {
		return region.pieces().get(0);
	}

	@Test
	void boxIsFoundInAnyPosition() {
		Region bar = Samples.rectangle(3, 4, 10, 2).transformed(Transform.rotation(0.7));
		Measures.Box box = Measures.smallestBox(only(bar), TOLERANCE);
		assertEquals(2, box.narrow(), 1e-9);
		assertEquals(10, box.wide(), 1e-9);
	}

	@Test
	void boxOfEllipseIsItsAxes() {
		Measures.Box box = Measures.smallestBox(only(Samples.region(Samples.ellipse(0, 0, 10, 6))), TOLERANCE);
		assertEquals(12, box.narrow(), 0.05);
		assertEquals(20, box.wide(), 0.05);
	}

	/** Area over half perimeter for a triangle: 6 / 6. */
	@Test
	void inscribedRadiusOfRightTriangle() {
		assertEquals(1, Measures.inscribedRadius(only(Samples.polygon(0, 0, 4, 0, 0, 3)), TOLERANCE), TOLERANCE.mm());
		assertEquals(1.732051, Measures.inscribedRadius(only(Samples.regular(3, 6 / Math.sqrt(3))), TOLERANCE),
				TOLERANCE.mm());
	}

	@Test
	void inscribedDiscKeepsOutOfHoles() {
		Region ring = Samples.region(Samples.circle(0, 0, 7), Samples.circle(0, 0, 5));
		assertEquals(1, Measures.inscribedRadius(only(ring), TOLERANCE), TOLERANCE.mm());
	}
}
