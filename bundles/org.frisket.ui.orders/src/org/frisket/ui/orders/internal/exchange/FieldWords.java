package org.frisket.ui.orders.internal.exchange;

import org.frisket.orders.intake.DateForm;
import org.frisket.orders.intake.OrderField;

/** What people call the fields of an order, and the ways of writing days. */
final class FieldWords {

	private FieldWords() {
	}

	static String of(OrderField field) {
		return switch (field) {
		case TITLE -> Messages.FieldWords_title;
		case CUSTOMER -> Messages.FieldWords_customer;
		case DUE -> Messages.FieldWords_due;
		case QUANTITY -> Messages.FieldWords_quantity;
		case NOTES -> Messages.FieldWords_notes;
		case REFERENCE -> Messages.FieldWords_reference;
		};
	}

	static String of(DateForm form) {
		return switch (form) {
		case ISO -> Messages.FieldWords_iso;
		case DMY -> Messages.FieldWords_dmy;
		case MDY -> Messages.FieldWords_mdy;
		};
	}
}
