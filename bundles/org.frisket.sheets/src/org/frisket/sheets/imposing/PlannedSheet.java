package org.frisket.sheets.imposing;

import java.util.List;

import org.frisket.model.FrisketFactory;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;

/**
 * A sheet as it is to be.
 *
 * @param kept     the id of the sheet of the host that it is, since something is pinned on it; null for a new one
 * @param name     of its own; null if it has none
 * @param stock    the id of its stock; may be null, as may {@code colour}
 * @param width    in mm along x; of a roll as much as is used
 * @param height   in mm along y
 * @param leftover the id of the leftover it is; null for a whole sheet
 * @param parts    that lie on it
 */
public record PlannedSheet(String kept, String name, String stock, String colour, double width, double height,
		boolean roll, double margin, double gap, String leftover, List<PlannedPart> parts) {

	public PlannedSheet {
		parts = List.copyOf(parts);
	}

	/** In mm². */
	public double partsArea() {
		return parts.stream().mapToDouble(part -> part.part().room().area()).sum();
	}

	/** The parts' share, from 0 to 1. */
	public double utilisation() {
		return width * height > 0 ? partsArea() / (width * height) : 0;
	}

	/** As the model has it, in no job yet; a new one has no id. */
	Sheet toSheet() {
		Sheet sheet = FrisketFactory.INSTANCE.createSheet();
		sheet.setId(kept);
		sheet.setName(name);
		sheet.setStock(stock);
		sheet.setColour(colour);
		sheet.setWidth(width);
		sheet.setHeight(height);
		sheet.setRoll(roll);
		sheet.setMargin(margin);
		sheet.setGap(gap);
		sheet.setLeftover(leftover);
		for (PlannedPart part : parts) {
			Placement placement = FrisketFactory.INSTANCE.createPlacement();
			placement.setJob(part.job());
			placement.setPart(part.part().key());
			placement.setCopy(part.copy());
			placement.setX(part.x());
			placement.setY(part.y());
			placement.setTurn(part.turn());
			placement.setPinned(part.pinned());
			sheet.getPlacements().add(placement);
		}
		return sheet;
	}
}
