package org.frisket.ui.orders.internal.docket;

import org.frisket.orders.PaperKind;

/** What papers are called. */
final class PaperWords {

	private PaperWords() {
	}

	static String of(PaperKind kind) {
		return switch (kind) {
		case DOCKET -> Messages.PaperWords_docket;
		case PROOF -> Messages.PaperWords_proof;
		case QUOTE -> Messages.PaperWords_quote;
		};
	}

	/** Of a file; small letters, as file names are. */
	static String file(PaperKind kind) {
		return switch (kind) {
		case DOCKET -> Messages.PaperWords_docketFile;
		case PROOF -> Messages.PaperWords_proofFile;
		case QUOTE -> Messages.PaperWords_quoteFile;
		};
	}
}
