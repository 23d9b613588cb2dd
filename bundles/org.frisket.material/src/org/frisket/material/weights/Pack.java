package org.frisket.material.weights;

import java.math.BigDecimal;

import org.eclipse.osgi.util.NLS;

/**
 * Sheets of one size on a scale or in a stack; many at once, so that neither the scale nor the rule need be fine.
 *
 * @param width  of a sheet, in mm, as is {@code height}
 * @param sheets how many
 */
public record Pack(BigDecimal width, BigDecimal height, int sheets) {

	private static final int MOST = 1_000_000;
	private static final int SQUARE_MM_PER_SQUARE_METRE = 6;

	/** @throws MeasureException unless all are above zero */
	public Pack {
		Measures.above0(width, Messages.Measures_side, "mm");
		Measures.above0(height, Messages.Measures_side, "mm");
		count(sheets);
	}

	private static BigDecimal count(int sheets) {
		if (sheets < 1 || sheets > MOST) {
			throw new MeasureException(NLS.bind(Messages.Pack_count, sheets));
		}
		return new BigDecimal(sheets);
	}

	/** In g, of one sheet. @param grammage in g/m² */
	public BigDecimal sheetMass(BigDecimal grammage) {
		return Measures.plain(grammage.multiply(squareMetres()));
	}

	/** In g, of all sheets. @param grammage in g/m² */
	public BigDecimal mass(BigDecimal grammage) {
		return Measures.plain(sheetMass(grammage).multiply(count(sheets)));
	}

	/** In g/m². */
	public BigDecimal grammage(Mass mass) {
		return Measures.grammage(mass.grams().divide(squareMetres().multiply(count(sheets)), Grade.EXACT));
	}

	private BigDecimal squareMetres() {
		return width.multiply(height).movePointLeft(SQUARE_MM_PER_SQUARE_METRE);
	}

	/**
	 * The caliper of a sheet in a stack, as with the pack method of ISO 534; a single sheet measures somewhat thicker.
	 *
	 * @param height of the stack, pressed together lightly, in mm
	 */
	public static Thickness thickness(BigDecimal height, int sheets) {
		return new Thickness(height.divide(count(sheets), Grade.EXACT));
	}
}
