package org.frisket.sheets.imposing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;

import org.frisket.model.Job;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.sheets.SheetPart;

/** What stays where it lies when a job is laid again. */
final class Pins {

	/** One that stays. @param job what placements call its job; null for the host */
	private record Pin(String job, SheetPart part, Placement placement) {
	}

	private final Map<Sheet, List<PlannedPart>> sheets = new LinkedHashMap<>();
	private final List<Pin> pins = new ArrayList<>();

	/** @param parts from job and key to the part; what is missing is not kept */
	Pins(Job host, BiFunction<String, String, SheetPart> parts) {
		for (Sheet sheet : host.getSheets()) {
			List<PlannedPart> here = new ArrayList<>();
			for (Placement placement : sheet.getPlacements()) {
				String job = placement.getJob();
				SheetPart part = placement.isPinned()
						? parts.apply(job == null ? host.getId() : job, placement.getPart())
						: null;
				if (part != null) {
					pins.add(new Pin(job, part, placement));
					here.add(new PlannedPart(job, part, placement.getCopy(), placement.getX(), placement.getY(),
							placement.getTurn(), true));
				}
			}
			if (!here.isEmpty()) {
				sheets.put(sheet, here);
			}
		}
	}

	/** The sheets with something pinned, and what that is. */
	Map<Sheet, List<PlannedPart>> sheets() {
		return sheets;
	}

	/**
	 * Numbers of copies of a part that need not be laid: those of it that are pinned, and for a single piece also those
	 * of the whole that it is a piece of. Pieces that are pinned do not stand for a whole; they stay besides.
	 */
	Set<Integer> copies(String job, SheetPart part) {
		Set<Integer> copies = new TreeSet<>();
		Set<String> own = new HashSet<>();
		part.elements().forEach(element -> own.add(element.element().getId()));
		for (Pin pin : pins) {
			if (Objects.equals(pin.job(), job) && (pin.part().key().equals(part.key())
					|| SheetPart.isPiece(part.key()) && !SheetPart.isPiece(pin.part().key()) && pin.part().elements()
							.stream().anyMatch(element -> own.contains(element.element().getId())))) {
				copies.add(pin.placement().getCopy());
			}
		}
		return copies;
	}
}
