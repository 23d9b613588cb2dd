package org.frisket.ui.views.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.ui.Icon;

/** Severities in words and signs. */
public final class SeverityText {

	private SeverityText() {
	}

	public static String of(Severity severity) {
		return switch (severity) {
		case BLOCKING -> Messages.SeverityText_blocking;
		case CAUTION -> Messages.SeverityText_caution;
		case NOTE -> Messages.SeverityText_note;
		};
	}

	/** A sign told apart by its shape first and its colour second. */
	public static Icon icon(Severity severity) {
		return switch (severity) {
		case BLOCKING -> Icon.BLOCKING;
		case CAUTION -> Icon.CAUTION;
		case NOTE -> Icon.NOTE;
		};
	}

	/** "1 blocking, 3 cautions", or that there are no findings. */
	public static String counts(Collection<Finding> findings) {
		List<String> parts = new ArrayList<>();
		for (Severity severity : Severity.values()) {
			long count = findings.stream().filter(finding -> finding.severity() == severity).count();
			if (count > 0) {
				parts.add(count(severity, count));
			}
		}
		return parts.isEmpty() ? Messages.SeverityText_none : String.join(", ", parts); //$NON-NLS-1$
	}

	private static String count(Severity severity, long count) {
		return switch (severity) {
		case BLOCKING -> count == 1 ? Messages.SeverityText_oneBlocking
				: NLS.bind(Messages.SeverityText_blockingCount, count);
		case CAUTION -> count == 1 ? Messages.SeverityText_oneCaution
				: NLS.bind(Messages.SeverityText_cautionCount, count);
		case NOTE -> count == 1 ? Messages.SeverityText_oneNote : NLS.bind(Messages.SeverityText_noteCount, count);
		};
	}
}
