package org.frisket.ui.sheets.internal.sheets.surface;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;

/** Where the sheets of a job lie on the surface: side by side, in rows when there are many. In mm. */
public final class Spread {

	/** What lies between sheets, in parts of the widest one, so that what is written below has room at every size. */
	private static final double GAP_SHARE = 0.12;
	/** The same between rows, in parts of the highest one. */
	private static final double ROW_SHARE = 0.35;
	private static final double LEAST_GAP = 15;
	private static final int LONGEST_ROW = 4;

	private final Map<Sheet, Bounds> places = new LinkedHashMap<>();

	public Spread(List<Sheet> sheets) {
		double widest = sheets.stream().mapToDouble(Sheet::getWidth).max().orElse(0);
		double highest = sheets.stream().mapToDouble(Sheet::getHeight).max().orElse(0);
		double gap = Math.max(LEAST_GAP, GAP_SHARE * Math.max(Math.min(widest, 2 * highest), highest));
		// rolls lie one below the other
		int row = sheets.stream().anyMatch(Sheet::isRoll) ? 1
				: sheets.size() <= LONGEST_ROW ? LONGEST_ROW : (int) Math.ceil(Math.sqrt(1.6 * sheets.size()));
		double x = 0;
		double y = 0;
		double rowHeight = 0;
		int inRow = 0;
		for (Sheet sheet : sheets) {
			if (inRow == row) {
				x = 0;
				y += rowHeight + Math.max(LEAST_GAP, ROW_SHARE * highest);
				rowHeight = 0;
				inRow = 0;
			}
			places.put(sheet, new Bounds(x, y, x + sheet.getWidth(), y + sheet.getHeight()));
			x += sheet.getWidth() + gap;
			rowHeight = Math.max(rowHeight, sheet.getHeight());
			inRow++;
		}
	}

	/** All of them, in the order of the job. */
	public Map<Sheet, Bounds> places() {
		return places;
	}

	public Bounds all() {
		return places.values().stream().reduce(Bounds.EMPTY, Bounds::with);
	}

	/** The sheet at a place of the surface. */
	public Optional<Sheet> at(Point place) {
		return places.entrySet().stream().filter(each -> each.getValue().contains(place)).map(Map.Entry::getKey)
				.findFirst();
	}

	/** The sheet at a place of the surface, or the one nearest to it. */
	public Optional<Sheet> nearest(Point place) {
		return places.entrySet().stream().min(Comparator.comparingDouble(each -> distance(each.getValue(), place)))
				.map(Map.Entry::getKey);
	}

	private static double distance(Bounds box, Point place) {
		return Math.hypot(Math.max(0, Math.max(box.minX() - place.x(), place.x() - box.maxX())),
				Math.max(0, Math.max(box.minY() - place.y(), place.y() - box.maxY())));
	}

	/** The upper left corner of a sheet. */
	public Point corner(Sheet sheet) {
		Bounds place = places.get(sheet);
		return place == null ? Point.ORIGIN : new Point(place.minX(), place.minY());
	}

	/** From about the centre of a part to where a copy of it lies on the surface. */
	public Transform placeOf(Placement placement) {
		return placed((Sheet) placement.eContainer(), placement.getX(), placement.getY(), placement.getTurn());
	}

	/** From about the centre of a part to a place on a sheet. @param turn in degrees, clockwise as seen */
	public Transform placed(Sheet sheet, double x, double y, double turn) {
		Point corner = corner(sheet);
		return Transform.rotation(Math.toRadians(turn)).then(Transform.translation(corner.x() + x, corner.y() + y));
	}
}
