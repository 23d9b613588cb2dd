package org.frisket.ui.material.internal.shelf;

import org.frisket.material.StockField;

/** Names of fields as labels: those of the headless side, with a capital at the beginning. */
final class FieldName {

	private FieldName() {
	}

	static String of(StockField field) {
		String label = field.label();
		return label.substring(0, 1).toUpperCase() + label.substring(1);
	}
}
