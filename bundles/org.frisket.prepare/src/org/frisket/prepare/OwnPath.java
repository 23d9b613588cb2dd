package org.frisket.prepare;

import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Transform;
import org.frisket.model.Matrix;

/** The clean outline of an element as path data in the element's own frame, so that its transform still applies. */
public final class OwnPath {

	/** A millionth of a millimetre: far below what the outline was cleaned to. */
	private static final int DECIMALS = 6;

	private OwnPath() {
	}

	/** Closed curves and open lines; empty if there is nothing, or if the element's transform flattens the plane. */
	public static String of(PreparedElement prepared) {
		Matrix m = prepared.element().getTransform();
		Transform placed = m == null ? Transform.IDENTITY : new Transform(m.a(), m.b(), m.c(), m.d(), m.e(), m.f());
		if (placed.determinant() == 0) {
			return "";
		}
		Outline curves = prepared.region().toOutline().plus(new Outline(prepared.lines()));
		return PathData.format(curves.transformed(placed.inverse()), DECIMALS);
	}
}
