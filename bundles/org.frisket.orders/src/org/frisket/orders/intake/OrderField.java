package org.frisket.orders.intake;

import java.util.List;
import java.util.Locale;

/** What a table tells of an order. */
public enum OrderField {

	TITLE("title", "name", "job", "order", "subject", "product", "titel", "auftrag", "bezeichnung", "artikel", "betreff"),
	CUSTOMER("customer", "client", "company", "buyer", "for", "kunde", "kundin", "firma", "auftraggeber", "besteller"),
	DUE("due", "due date", "date", "deadline", "needed by", "ready by", "delivery date", "termin", "liefertermin",
			"lieferdatum", "datum", "fällig", "fällig am", "bis"),
	QUANTITY("quantity", "qty", "count", "copies", "amount", "pieces", "pcs", "menge", "anzahl", "stück", "stückzahl",
			"auflage"),
	NOTES("notes", "note", "remarks", "remark", "comment", "comments", "notiz", "notizen", "bemerkung", "bemerkungen",
			"anmerkung", "kommentar"),
	REFERENCE("reference", "ref", "order number", "order no", "order id", "number", "referenz", "bestellnummer",
			"auftragsnummer", "nummer");

	/** The likeliest first. */
	private final List<String> headers;

	OrderField(String... headers) {
		this.headers = List.of(headers);
	}

	/** On the command line and in messages. */
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}

	/** How likely a header means this: the less the likelier; less than nothing if it does not. */
	int guess(String header) {
		return headers.indexOf(key(header));
	}

	/** Headers that are the same but for case and signs have the same. */
	static String key(String header) {
		return header.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
	}
}
