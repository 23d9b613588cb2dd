package org.frisket.impose;

import java.util.List;

/**
 * Parts as they lie on sheets, none overlapping.
 *
 * @param sheets     what each of the sheets used is
 * @param placements by sheets
 * @param left       copies that found no place, by part, with the quantity that is left
 * @param usedLength in mm along the last sheet or the roll, margins included
 */
public record Layout(List<Ground> sheets, List<Placement> placements, List<Part> left, double usedLength) {

	public Layout {
		sheets = List.copyOf(sheets);
		placements = List.copyOf(placements);
		left = List.copyOf(left);
	}

	/** Of all parts laid, in mm². */
	public double partsArea() {
		return placements.stream().mapToDouble(p -> p.part().region().area()).sum();
	}

	/** Of the sheets, the last one up to the used length only, in mm². */
	public double usedArea() {
		double area = 0;
		for (int i = 0; i < sheets.size(); i++) {
			area += sheets.get(i).width() * (i == sheets.size() - 1 ? usedLength : sheets.get(i).length());
		}
		return area;
	}

	/** The parts' share of the used area, from 0 to 1; 0 if nothing is laid. */
	public double utilisation() {
		double used = usedArea();
		return used == 0 ? 0 : partsArea() / used;
	}

	/** Better: less left, then fewer sheets, then less of the last one. */
	public boolean isBetterThan(Layout other) {
		int mine = left.stream().mapToInt(Part::quantity).sum();
		int others = other.left.stream().mapToInt(Part::quantity).sum();
		if (mine != others) {
			return mine < others;
		}
		if (sheets.size() != other.sheets.size()) {
			return sheets.size() < other.sheets.size();
		}
		return usedLength < other.usedLength;
	}
}
