package org.frisket.material.sizes;

import java.math.BigDecimal;
import java.util.Optional;

/** The form stock comes in; its text is read again by {@link Formats#parse(String)} as the same value. */
public sealed interface Format {

	/** In mm. */
	BigDecimal width();

	/** A sheet. @param width and {@code height} in mm, as the sheet is named: A4 is 210 wide */
	record Sheet(BigDecimal width, BigDecimal height) implements Format {

		/** @throws org.frisket.material.weights.MeasureException unless both are lengths a sheet can have */
		public Sheet {
			width = Formats.side(width);
			height = Formats.side(height);
		}

		@Override
		public String toString() {
			return Formats.text(this);
		}
	}

	/** A roll. @param width in mm @param length in mm, empty for one that is sold by the length */
	record Roll(BigDecimal width, Optional<BigDecimal> length) implements Format {

		/** @throws org.frisket.material.weights.MeasureException unless it is a length that a roll can have */
		public Roll {
			width = Formats.side(width);
			length = length.map(Formats::length);
		}

		@Override
		public String toString() {
			return Formats.text(this);
		}
	}
}
