package org.frisket.prepare.repair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Artwork.Area;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;

/**
 * The path of an outline as artwork, and back again. Closed contours that a blade frees or a printer fills are one area
 * by the nonzero rule, as the bench has them; open ones are lines. Of an outline that is only drawn, creased or perforated,
 * all contours are lines and stay so.
 */
final class OutlineArt {

	private static final double FLATNESS = 0.01;

	private final Outline curves;
	private final boolean filled;

	/** @param curves in the job's frame */
	OutlineArt(Outline curves, boolean filled) {
		this.curves = curves;
		this.filled = filled;
	}

	/** Whether anything but lines is made of it; an outline without an operation is cut. */
	static boolean isFilled(org.frisket.model.Outline outline) {
		return outline.getOperations().isEmpty()
				|| outline.getOperations().stream().map(Operation::getKind).anyMatch(OutlineArt::isFilled);
	}

	private static boolean isFilled(OperationKind kind) {
		return kind == OperationKind.CUT || kind == OperationKind.KISS_CUT || kind == OperationKind.PRINT;
	}

	boolean isFilled() {
		return filled;
	}

	Artwork artwork() {
		if (!filled) {
			return new Artwork(List.of(), curves.contours());
		}
		List<Contour> closed = new ArrayList<>();
		List<Contour> open = new ArrayList<>();
		curves.contours().forEach(contour -> (contour.isClosed() ? closed : open).add(contour));
		return new Artwork(closed.isEmpty() ? List.of() : List.of(new Area(new Outline(closed), FillRule.NON_ZERO)), open);
	}

	/**
	 * What a path by the nonzero rule holds of artwork. A closed line inside an area, and a contour of an area by the
	 * even-odd rule, is turned so that it is an edge there: it would be swallowed otherwise.
	 */
	Outline written(Artwork artwork) {
		if (!filled) {
			return artwork.toOutline();
		}
		List<Contour> written = new ArrayList<>();
		List<Contour> turnable = new ArrayList<>(artwork.lines().stream().filter(Contour::isClosed).toList());
		for (Area area : artwork.areas()) {
			(area.rule() == FillRule.NON_ZERO ? written : turnable).addAll(area.outline().contours());
		}
		boolean outerRunsBack = written.stream().mapToDouble(Contour::signedArea).sum() > 0;
		turnable.sort(Comparator.comparingDouble(contour -> -Math.abs(contour.signedArea())));
		for (Contour contour : turnable) {
			int around = contour.isEmpty() ? 0 : turns(written, inside(contour));
			boolean runsBack = around == 0 ? outerRunsBack : around < 0;
			written.add(runsBack == contour.signedArea() > 0 ? contour : contour.reversed());
		}
		artwork.lines().stream().filter(line -> !line.isClosed()).forEach(written::add);
		return new Outline(written);
	}

	/** A place on it, away from its nodes. */
	private static Point inside(Contour contour) {
		Segment segment = contour.segments().get(contour.segments().size() / 2);
		return segment.at(0.5);
	}

	/** How often contours turn round a place, counter-clockwise to the viewer if negative. */
	private static int turns(List<Contour> contours, Point place) {
		int turns = 0;
		for (Contour contour : contours) {
			List<Point> corners = contour.flattened(FLATNESS);
			for (int i = 0; i < corners.size(); i++) {
				turns += turn(corners.get(i), corners.get((i + 1) % corners.size()), place);
			}
		}
		return turns;
	}

	/** Whether a side passes to the right of the place, and which way. */
	private static int turn(Point from, Point to, Point place) {
		if (from.y() <= place.y() == to.y() <= place.y()) {
			return 0;
		}
		double x = from.x() + (place.y() - from.y()) / (to.y() - from.y()) * (to.x() - from.x());
		return x <= place.x() ? 0 : to.y() > from.y() ? 1 : -1;
	}
}
