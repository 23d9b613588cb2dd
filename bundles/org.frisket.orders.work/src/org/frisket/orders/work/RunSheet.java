package org.frisket.orders.work;

import java.math.BigDecimal;

/**
 * A sheet of a run, or what it uses of a roll. Lengths in mm, areas in mm².
 *
 * @param leftover     the id of the leftover it is; empty for a whole sheet
 * @param amount       one of a sheet; of a roll what is used, in metres
 * @param partsArea    what parts take up of it
 * @param offcutWidth  of the largest rectangle that is left, as is {@code offcutHeight}; 0 if there is none worth keeping
 */
public record RunSheet(StockColour of, String leftover, BigDecimal amount, BigDecimal width, BigDecimal height,
		BigDecimal partsArea, BigDecimal offcutWidth, BigDecimal offcutHeight) {

	public boolean isLeftover() {
		return !leftover.isEmpty();
	}

	public boolean hasOffcut() {
		return offcutWidth.signum() > 0 && offcutHeight.signum() > 0;
	}

	/** In mm². */
	public BigDecimal area() {
		return width.multiply(height);
	}
}
