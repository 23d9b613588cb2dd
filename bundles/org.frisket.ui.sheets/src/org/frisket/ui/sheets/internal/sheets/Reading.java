package org.frisket.ui.sheets.internal.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.sheets.LaidPart;
import org.frisket.sheets.LaidSheet;
import org.frisket.ui.sheets.internal.sheets.surface.PartPicture;
import org.frisket.ui.sheets.internal.sheets.surface.SheetFlags;

/**
 * What is known of the sheets of a job. It was worked out on a copy; sheets and placements are told as those of the job
 * itself.
 *
 * @param jobs     prepared, by id: the job and its guests as far as they could be had
 * @param pictures of all parts there are
 * @param laid     what each sheet comes to
 * @param parts    as they lie
 * @param missing  copies whose part is no more
 * @param unlaid   how many copies lie on no sheet
 * @param troubles why guests could not be had
 */
record Reading(Map<String, PreparedJob> jobs, Map<PartKey, PartPicture> pictures, Map<Sheet, LaidSheet> laid,
		Map<Placement, LaidPart> parts, List<Placement> missing, int unlaid, List<String> troubles) {

	static final Reading NONE = new Reading(Map.of(), Map.of(), Map.of(), Map.of(), List.of(), 0,
			List.of());

	/** @param originals of what was copied, by their copies */
	static Reading of(Map<String, PreparedJob> jobs, Map<PartKey, PartPicture> pictures, List<LaidSheet> sheets,
			Map<EObject, EObject> originals, int unlaid, List<String> troubles) {
		Map<Sheet, LaidSheet> laid = new IdentityHashMap<>();
		Map<Placement, LaidPart> parts = new IdentityHashMap<>();
		List<Placement> missing = new ArrayList<>();
		for (LaidSheet sheet : sheets) {
			laid.put((Sheet) originals.get(sheet.sheet()), sheet);
			sheet.parts().forEach(part -> parts.put((Placement) originals.get(part.placement()), part));
			sheet.missing().forEach(placement -> missing.add((Placement) originals.get(placement)));
		}
		return new Reading(Map.copyOf(jobs), new HashMap<>(pictures), laid, parts, List.copyOf(missing), unlaid,
				List.copyOf(troubles));
	}

	Optional<LaidSheet> of(Sheet sheet) {
		return Optional.ofNullable(laid.get(sheet));
	}

	/** A copy as it lies; empty if its part is no more. */
	Optional<LaidPart> part(Placement placement) {
		return Optional.ofNullable(parts.get(placement));
	}

	/** What is wrong, numbered through all sheets in their order. */
	List<SheetFlags.Planted> findings(List<Sheet> sheets) {
		List<SheetFlags.Planted> findings = new ArrayList<>();
		for (Sheet sheet : sheets) {
			for (Finding finding : of(sheet).map(LaidSheet::findings).orElse(List.of())) {
				findings.add(new SheetFlags.Planted(findings.size() + 1, sheet, finding));
			}
		}
		return findings;
	}

	/** The parts' share of all sheets, from 0 to 1. */
	double utilisation() {
		double parts = laid.values().stream().mapToDouble(LaidSheet::partsArea).sum();
		double all = laid.keySet().stream().mapToDouble(sheet -> sheet.getWidth() * sheet.getHeight()).sum();
		return all > 0 ? parts / all : 0;
	}
}
