package org.frisket.export.names;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a name can be made of. */
public enum NameField {
	/** The job's number, or its title if it has none. */
	JOB,
	TITLE,
	NUMBER,
	CUSTOMER,
	/** The number of the sheet, from 1, with as many digits as the last one has; empty for the bench. */
	SHEET,
	/** How many sheets the job has; empty for the bench. */
	SHEETS,
	/** The id of the sheet's stock. */
	STOCK,
	COLOUR,
	/** The id of the machine. */
	MACHINE,
	/** The day the job is due, as in 2026-12-05. */
	DUE,
	/** The ending of the format. */
	FORMAT;

	/** As it stands between braces. */
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}

	static Optional<NameField> of(String word) {
		return Arrays.stream(values()).filter(field -> field.word().equals(word)).findFirst();
	}
}
