package org.frisket.material.advice;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.StockFamily;
import org.frisket.material.trials.StockFacts;

/** What tells stocks of a family apart when it comes to pressure. */
enum Measure {
	/** In g/m². */
	GRAMMAGE,
	/** In mm. */
	CALIPER;

	/** What a stock is measured by: paper and card by weight, the rest by thickness; the other where one is not known. */
	static Optional<Measure> of(StockFacts stock) {
		boolean byWeight = stock.family() == StockFamily.CARD || stock.family() == StockFamily.PAPER
				|| stock.family() == StockFamily.LABEL;
		Measure first = byWeight ? GRAMMAGE : CALIPER;
		Measure second = byWeight ? CALIPER : GRAMMAGE;
		return first.value(stock) > 0 ? Optional.of(first)
				: second.value(stock) > 0 ? Optional.of(second) : Optional.empty();
	}

	/** 0 if it is not known. */
	double value(StockFacts stock) {
		return this == GRAMMAGE ? stock.grammage() : stock.caliperMm();
	}

	/** With its unit. */
	String text(double value) {
		return this == GRAMMAGE ? NLS.bind(Messages.Measure_grammage, plain(value, 1))
				: NLS.bind(Messages.Measure_caliper, plain(value, 3));
	}

	/** Without trailing zeros. */
	static String plain(double value, int decimals) {
		BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
		return rounded.signum() == 0 ? "0" : rounded.toPlainString();
	}
}
