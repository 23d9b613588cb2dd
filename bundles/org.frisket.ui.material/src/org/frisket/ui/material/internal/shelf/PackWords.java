package org.frisket.ui.material.internal.shelf;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.shelf.PackStudy;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.Reading;

/** What stands on a pack, in all the other units. */
final class PackWords {

	private static final int POUND_DECIMALS = 1;

	private PackWords() {
	}

	static String of(Reading reading) {
		if (reading instanceof Reading.Pounds pounds) {
			StringBuilder lines = new StringBuilder(Messages.PackDialog_another);
			PackStudy.possible(pounds.value()).forEach(weight -> lines.append('\n').append(NLS.bind(
					Messages.PackDialog_possible, StockText.grammage(weight.grammage()), StockText.of(weight.grade()))));
			return lines.toString();
		}
		if (reading instanceof Reading.Basis basis) {
			return inGrades(new Reading.Grammage(basis.weight().grammage()));
		}
		if (reading instanceof Reading.Grammage grammage) {
			return inGrades(grammage);
		}
		Reading.Caliper caliper = (Reading.Caliper) reading;
		StringBuilder lines = new StringBuilder(NLS.bind(Messages.PackDialog_caliper,
				StockText.number(caliper.thickness().mm(), 4), StockText.number(caliper.thickness().mils(), 2)));
		PackStudy.estimates(caliper.thickness()).forEach(estimate -> lines.append('\n').append(NLS.bind(
				Messages.PackDialog_perhaps, new Object[] { StockText.number(estimate.grammage(), 0),
						StockText.of(estimate.finish()), StockText.number(estimate.bulk().value(), 2) })));
		return lines.toString();
	}

	private static String inGrades(Reading.Grammage grammage) {
		StringBuilder lines = new StringBuilder(
				NLS.bind(Messages.PackDialog_inGrades, StockText.grammage(grammage.value())));
		for (Grade grade : Grade.values()) {
			lines.append('\n').append(NLS.bind(Messages.PackDialog_counted,
					StockText.number(grade.pounds(grammage.value()), POUND_DECIMALS), StockText.of(grade)));
		}
		return lines.toString();
	}
}
