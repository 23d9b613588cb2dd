package org.frisket.ui.bench.internal.export;

import org.frisket.export.plan.HandoffRequest;

/**
 * What the user wants written.
 *
 * @param machine id of the machine; empty for the one most likely meant
 * @param anyway  whether blocking findings are known and accepted
 */
public record ExportRequest(HandoffRequest handoff, String machine, boolean anyway) {

	/** The same, blocking findings accepted. */
	ExportRequest despiteFindings() {
		return new ExportRequest(handoff, machine, true);
	}

	/** Of the file, or of the folder for several. */
	String place() {
		return String.valueOf(handoff.destination().path().getFileName());
	}
}
