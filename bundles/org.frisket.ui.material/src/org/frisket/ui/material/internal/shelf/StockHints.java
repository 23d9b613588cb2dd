package org.frisket.ui.material.internal.shelf;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Label;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.StockField;
import org.frisket.material.advice.Caution;
import org.frisket.material.advice.Cautions;
import org.frisket.material.shelf.StockDraft;

/** What follows from what is written in a form: the weight, the thickness to be expected, and what to beware of. */
final class StockHints {

	private final Label known;
	private final Label cautions;
	private final ColourButton swatch;

	StockHints(Label known, Label cautions, ColourButton swatch) {
		this.known = known;
		this.cautions = cautions;
		this.swatch = swatch;
	}

	void show(StockDraft draft) {
		set(known, draft.stock().map(StockHints::known).orElse("")); //$NON-NLS-1$
		set(cautions, family(draft).map(family -> Cautions.of(family).stream().map(Caution::text)
				.collect(Collectors.joining("\n"))).orElse("")); //$NON-NLS-1$ //$NON-NLS-2$
		swatch.refresh();
	}

	private static String known(Stock stock) {
		String weight = stock.grammage().map(StockText::grammage).orElse(""); //$NON-NLS-1$
		String thickness = stock.caliper().map(StockText::caliper).orElse(""); //$NON-NLS-1$
		String bulk = stock.bulk().map(value -> NLS.bind(Messages.StockHints_bulk, StockText.number(value.value(), 2)))
				.orElse(""); //$NON-NLS-1$
		return Arrays.asList(weight, thickness, bulk).stream().filter(part -> !part.isEmpty())
				.collect(Collectors.joining(Messages.StockText_parting));
	}

	private static Optional<StockFamily> family(StockDraft draft) {
		return Arrays.stream(StockFamily.values())
				.filter(family -> StockField.wordOf(family).equals(draft.text(StockField.FAMILY))).findFirst();
	}

	private static void set(Label label, String text) {
		String plain = text.replace("&", "&&"); //$NON-NLS-1$ //$NON-NLS-2$
		if (!label.getText().equals(plain)) {
			label.setText(plain);
		}
	}
}
