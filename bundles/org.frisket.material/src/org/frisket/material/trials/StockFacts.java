package org.frisket.material.trials;

import java.math.BigDecimal;
import java.util.Objects;

import org.frisket.material.Caliper;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;

/**
 * What settings need to know of a stock.
 *
 * @param stock     its id; empty if it is none of the studio's
 * @param grammage  in g/m²; 0 if it is not known
 * @param caliperMm its thickness in mm; 0 if it is not known
 * @param abrasion  how fast it dulls a blade; 1 for plain card
 */
public record StockFacts(String stock, StockFamily family, double grammage, double caliperMm, double abrasion) {

	public StockFacts {
		Objects.requireNonNull(stock);
		Objects.requireNonNull(family);
		if (!(grammage >= 0 && grammage < 1e6) || !(caliperMm >= 0 && caliperMm < 1e4) || !(abrasion >= 0
				&& abrasion < 1e4)) {
			throw new IllegalArgumentException("a stock of " + grammage + " g/m², " + caliperMm + " mm, abrasion "
					+ abrasion);
		}
	}

	/** Of a stock on the shelf; a thickness that nobody measured counts as not known. */
	public static StockFacts of(Stock stock) {
		return new StockFacts(stock.id(), stock.family(), stock.grammage().map(BigDecimal::doubleValue).orElse(0.0),
				stock.statedCaliper().filter(caliper -> caliper.source() == Caliper.Source.MEASURED)
						.map(caliper -> caliper.thickness().mm().doubleValue()).orElse(0.0),
				stock.abrasion().doubleValue());
	}

	/** Nothing but its family and weight. */
	public static StockFacts of(StockFamily family, double grammage, double caliperMm) {
		return new StockFacts("", family, grammage, caliperMm, 1);
	}
}
