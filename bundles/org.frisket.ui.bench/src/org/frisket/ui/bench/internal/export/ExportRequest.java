package org.frisket.ui.bench.internal.export;

import java.nio.file.Path;
import java.util.Map;

import org.frisket.export.Exporter;
import org.frisket.prepare.extension.Contribution;

/**
 * What the user wants written.
 *
 * @param options texts by the name of their option
 * @param anyway  whether blocking findings are known and accepted
 */
public record ExportRequest(Contribution<Exporter> format, Map<String, String> options, Path target, boolean anyway) {

	public ExportRequest {
		options = Map.copyOf(options);
	}

	/** The same, blocking findings accepted. */
	ExportRequest despiteFindings() {
		return new ExportRequest(format, options, target, true);
	}
}
