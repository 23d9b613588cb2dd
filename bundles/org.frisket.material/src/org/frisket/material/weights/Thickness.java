package org.frisket.material.weights;

import java.math.BigDecimal;

/**
 * How thick a sheet is, in mm. A point of paper is a mil, 0.001 in = 25.4 µm exactly, and has nothing to do with the
 * point of type.
 */
public record Thickness(BigDecimal mm) {

	private static final BigDecimal MM_PER_MIL = new BigDecimal("0.0254");
	private static final int UM_PER_MM = 3;

	/** @throws MeasureException unless a sheet can be that thick */
	public Thickness {
		mm = Measures.caliper(mm);
	}

	public static Thickness ofMils(BigDecimal mils) {
		return new Thickness(mils.multiply(MM_PER_MIL));
	}

	public static Thickness ofMicrometres(BigDecimal um) {
		return new Thickness(um.movePointLeft(UM_PER_MM));
	}

	/** The same as points. */
	public BigDecimal mils() {
		return Measures.plain(mm.divide(MM_PER_MIL, Grade.EXACT));
	}

	public BigDecimal micrometres() {
		return Measures.plain(mm.movePointRight(UM_PER_MM));
	}
}
