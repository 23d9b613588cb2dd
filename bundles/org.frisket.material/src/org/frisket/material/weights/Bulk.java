package org.frisket.material.weights;

import java.math.BigDecimal;

/**
 * The room a gram of paper takes, in cm³/g: thickness in µm over grammage in g/m² (thickness by ISO 534, grammage by ISO
 * 536). Weight alone never says how thick a sheet is.
 */
public record Bulk(BigDecimal value) {

	/** Coated and glossy, smooth and uncoated, felt and vellum: middles of common practice, no source. */
	public static final Bulk COATED = new Bulk(new BigDecimal("0.9"));
	public static final Bulk SMOOTH = new Bulk(new BigDecimal("1.2"));
	public static final Bulk TEXTURED = new Bulk(new BigDecimal("1.45"));

	/** @throws MeasureException unless it is above zero */
	public Bulk {
		value = Measures.plain(Measures.above0(value, Messages.Measures_bulk, "cm³/g"));
	}

	/** @param grammage in g/m² */
	public static Bulk of(Thickness thickness, BigDecimal grammage) {
		return new Bulk(thickness.micrometres().divide(Measures.grammage(grammage), Grade.EXACT));
	}

	/** Apparent density in g/cm³. */
	public BigDecimal density() {
		return BigDecimal.ONE.divide(value, Grade.EXACT);
	}

	/** @param grammage in g/m² */
	public Thickness thickness(BigDecimal grammage) {
		return Thickness.ofMicrometres(Measures.grammage(grammage).multiply(value));
	}

	/** In g/m². */
	public BigDecimal grammage(Thickness thickness) {
		return Measures.grammage(thickness.micrometres().divide(value, Grade.EXACT));
	}
}
