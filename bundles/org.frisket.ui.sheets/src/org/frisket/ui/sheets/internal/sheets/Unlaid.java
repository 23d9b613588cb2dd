package org.frisket.ui.sheets.internal.sheets;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedJob;
import org.frisket.sheets.JobParts;
import org.frisket.sheets.SheetPart;

/** Counts what lies on no sheet. */
final class Unlaid {

	private Unlaid() {
	}

	/** How many copies of parts of the job and its guests are not laid. Takes a moment: not for the UI thread. */
	static int count(Job host, Map<String, PreparedJob> jobs, Tolerance tolerance, Monitor monitor) {
		Map<PartKey, Integer> laid = new HashMap<>();
		for (Sheet sheet : host.getSheets()) {
			for (Placement placement : sheet.getPlacements()) {
				laid.merge(PartKey.of(host, placement), 1, Integer::sum);
			}
		}
		boolean apart = host.getLaying() != null && host.getLaying().isApart();
		int[] missing = new int[1];
		jobs.forEach((id, job) -> {
			int copies = Math.max(1, job.job().getQuantity());
			Set<String> keys = new HashSet<>();
			for (SheetPart part : JobParts.of(job, apart, tolerance, monitor)) {
				if (keys.add(part.key())) {
					missing[0] += Math.max(0, copies - laid.getOrDefault(new PartKey(id, part.key()), 0));
				}
			}
		});
		return missing[0];
	}
}
