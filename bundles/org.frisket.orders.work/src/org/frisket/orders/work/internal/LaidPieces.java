package org.frisket.orders.work.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.orders.StoredJob;
import org.frisket.orders.work.Need;
import org.frisket.orders.work.RunPiece;
import org.frisket.orders.work.StockColour;
import org.frisket.prepare.PreparedJob;
import org.frisket.sheets.JobParts;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.Offcuts;
import org.frisket.sheets.SheetPart;
import org.frisket.sheets.imposing.PlannedPart;
import org.frisket.sheets.imposing.PlannedSheet;
import org.frisket.sheets.imposing.SheetPlan;

/** How many whole pieces of jobs lie on sheets: as many as there are of the part that was laid the least. */
public final class LaidPieces {

	private record Part(String job, String key) {
	}

	private LaidPieces() {
	}

	/**
	 * @param apart whether the pieces of an element were laid one by one
	 * @return those of which there are any, in the order of jobs and layers
	 */
	public static List<RunPiece> of(SheetPlan plan, List<StoredJob> stored, Map<String, Map<StockColour, Need>> needs,
			Map<String, PreparedJob> jobs, boolean apart) {
		Map<Part, Integer> laid = new HashMap<>();
		for (PlannedSheet sheet : plan.sheets()) {
			for (PlannedPart part : sheet.parts()) {
				laid.merge(new Part(part.job(), part.part().key()), 1, Integer::sum);
			}
		}
		List<RunPiece> pieces = new ArrayList<>();
		for (StoredJob each : stored) {
			String id = each.entry().id();
			Map<StockColour, Integer> least = new LinkedHashMap<>();
			for (SheetPart part : JobParts.of(jobs.get(id), apart, Tolerance.DEFAULT, Monitor.NONE)) {
				least.merge(StockColour.of(part.layer()), laid.getOrDefault(new Part(id, part.key()), 0), Math::min);
			}
			least.forEach((of, count) -> {
				Need need = needs.get(id).get(of);
				if (count > 0) {
					pieces.add(new RunPiece(id, each.entry().number(), each.entry().title(), of, count,
							need != null && need.print(), 0, 0, 0));
				}
			});
		}
		return pieces;
	}

	/** What is left of a sheet in one piece, if it is worth keeping. */
	public static Optional<Bounds> offcut(LaidSheet sheet) {
		return Offcuts.largest(sheet, Tolerance.DEFAULT, Monitor.NONE).filter(Offcuts::isWorthKeeping);
	}
}
