package org.frisket.geometry.clean;

import java.util.function.IntPredicate;

/** Which places lie inside an outline, by how often it winds round them. As in SVG. */
public enum FillRule {

	/** Inside is where the windings do not cancel out. */
	NON_ZERO(Winding.NON_ZERO),
	/** Inside is where the windings are odd in number. */
	EVEN_ODD(Winding.EVEN_ODD);

	private final IntPredicate inside;

	FillRule(IntPredicate inside) {
		this.inside = inside;
	}

	IntPredicate inside() {
		return inside;
	}
}
