package org.frisket.material.weights;

import java.math.BigDecimal;

/** Pounds with the grade that gives them a meaning, such as 65 lb cover. */
public record BasisWeight(BigDecimal pounds, Grade grade) {

	/** @throws MeasureException unless it comes to a grammage that paper can have */
	public BasisWeight {
		pounds = Measures.plain(pounds);
		Measures.above0(pounds, Messages.Measures_pounds, "lb");
		Measures.grammage(grade.grammage(pounds));
	}

	/** In g/m². */
	public BigDecimal grammage() {
		return grade.grammage(pounds);
	}

	/** The same paper counted in another grade. */
	public BasisWeight in(Grade other) {
		return other == grade ? this : new BasisWeight(other.pounds(grammage()), other);
	}

	@Override
	public String toString() {
		return pounds.toPlainString() + " lb " + grade.word();
	}
}
