package org.frisket.prepare;

import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Transform;
import org.frisket.model.Element;
import org.frisket.model.Matrix;

/** Curves of the job's frame as path data in an element's own frame, so that its transform still applies. */
public final class OwnPath {

	/** A millionth of a millimetre: far below what the outline was cleaned to. */
	private static final int DECIMALS = 6;

	private OwnPath() {
	}

	/** Closed curves and open lines; empty if there is nothing, or if the element's transform flattens the plane. */
	public static String of(PreparedElement prepared) {
		return of(prepared.region().toOutline().plus(new Outline(prepared.lines())), prepared.element());
	}

	/** @return empty if there is nothing, or if the element's transform flattens the plane */
	public static String of(Outline curves, Element element) {
		Transform placed = placement(element);
		return placed.determinant() == 0 ? "" : PathData.format(curves.transformed(placed.inverse()), DECIMALS);
	}

	/** From an element's own frame into the job's. */
	public static Transform placement(Element element) {
		Matrix m = element.getTransform();
		return m == null ? Transform.IDENTITY : new Transform(m.a(), m.b(), m.c(), m.d(), m.e(), m.f());
	}
}
