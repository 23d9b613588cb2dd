package org.frisket.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.Handoff;
import org.frisket.geometry.Bounds;
import org.frisket.model.Job;
import org.frisket.sheets.SheetName;

/** One line that tells which job and sheet this is, how large it has to come out, and when it is due. */
final class Label {

	private Label() {
	}

	static String of(Handoff handoff) {
		Job job = handoff.job().job();
		List<String> parts = new ArrayList<>();
		if (job.getNumber() != null) {
			parts.add(NLS.bind(Messages.Label_job, job.getNumber()));
		}
		if (job.getTitle() != null) {
			parts.add(job.getTitle().lines().findFirst().orElse(""));
		}
		handoff.sheet().ifPresent(sheet -> parts.add(SheetName.of(sheet)));
		Bounds page = handoff.page(0);
		parts.add(NLS.bind(Messages.Label_size, number(page.width()), number(page.height())));
		if (job.getDue() != null) {
			parts.add(NLS.bind(Messages.Label_due, job.getDue()));
		}
		return String.join(" · ", parts);
	}

	private static String number(double mm) {
		return String.format(Locale.ROOT, "%.1f", mm).replaceFirst("\\.0$", "");
	}
}
