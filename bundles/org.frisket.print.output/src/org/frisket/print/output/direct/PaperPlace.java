package org.frisket.print.output.direct;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/**
 * Where a sheet lies on the paper of a printer: its upper left corner on that of the paper, in its true size.
 * Places are in whole units of the printer, counted from where it can begin to print, and a strip's edges are such
 * places, so that nothing is rounded but the corner itself, once for all that is printed.
 *
 * @param dpiX   units in an inch, across
 * @param dpiY   the same down the paper
 * @param paper  the whole paper, in units; its corner is at or left of and above zero
 * @param area   where the printer can print, in units
 */
public record PaperPlace(int dpiX, int dpiY, Bounds paper, Bounds area) {

	private static final double MM_PER_INCH = 25.4;
	/** Common practice for art that is held in a hand, no source. */
	private static final int COARSEST_DPI = 300;
	/**
	 * Finer than that nobody sees, and the window system keeps all that it is sent until the page is whole; a choice
	 * of ours.
	 */
	private static final int FINEST_DPI = 600;
	/** By which a strip reaches below the next one, mm; a choice of ours. */
	private static final double LAP = 0.5;
	/** Of one strip, in memory: 16 MB, and a little for its lap. */
	static final int MOST_PIXELS = 4_000_000;

	/** @throws IllegalArgumentException if a printer says that it has no units, or no paper */
	public PaperPlace {
		if (dpiX <= 0 || dpiY <= 0 || !(paper.width() > 0) || !(paper.height() > 0)) {
			throw new IllegalArgumentException(Messages.PaperPlace_noPaper);
		}
	}

	/** From mm on the sheet to units. */
	public Transform toUnits() {
		return Transform.scaling(dpiX / MM_PER_INCH, dpiY / MM_PER_INCH)
				.then(Transform.translation(paper.minX(), paper.minY()));
	}

	private Bounds mm(Bounds units) {
		Transform toMm = toUnits().inverse();
		return Bounds.of(toMm.apply(new Point(units.minX(), units.minY())))
				.with(toMm.apply(new Point(units.maxX(), units.maxY())));
	}

	/** The paper in mm; printers count it in whole units, so it may be short by one of them. */
	public Bounds paperMm() {
		return mm(paper);
	}

	/** Where can be printed, in mm of the sheet. */
	public Bounds printable() {
		return mm(area);
	}

	/** The length of a unit, the longer one, mm. */
	public double unit() {
		return MM_PER_INCH / Math.min(dpiX, dpiY);
	}

	/**
	 * What is sent, from top to bottom, of all that can be printed of a piece of the sheet. Each strip reaches a
	 * little below the next one, which is painted over it: edges that merely meet are seen as a pale line where pixels
	 * are smaller than units.
	 *
	 * @param content what is printed, in mm on the sheet; nothing else is sent
	 */
	public List<Strip> strips(Bounds content) {
		List<Strip> strips = new ArrayList<>();
		if (content.isEmpty()) {
			return strips;
		}
		Point corner = toUnits().apply(new Point(content.minX(), content.minY()));
		Point end = toUnits().apply(new Point(content.maxX(), content.maxY()));
		Grain across = Grain.of(dpiX);
		Grain down = Grain.of(dpiY);
		// a unit more for edges that lie between two
		int left = (int) Math.max(area.minX(), Math.floor(corner.x()) - 1);
		int top = (int) Math.max(area.minY(), Math.floor(corner.y()) - 1);
		int right = left + across.whole((int) Math.min(area.maxX(), Math.ceil(end.x()) + 1) - left);
		int bottom = (int) Math.min(area.maxY(), Math.ceil(end.y()) + 1);
		if (right <= left || bottom <= top) {
			return strips;
		}
		int pixels = across.pixels(right - left);
		int height = down.units(Math.max(1, MOST_PIXELS / pixels));
		int lap = (int) Math.ceil(LAP * dpiY / MM_PER_INCH);
		for (int y = top; y < bottom; y += height) {
			int units = down.whole(Math.min(height + lap, bottom - y));
			strips.add(new Strip(left, y, right - left, units, mm(new Bounds(left, y, right, y + units)), pixels,
					down.pixels(units)));
		}
		return strips;
	}

	/**
	 * How pixels go with units, so that a strip holds whole numbers of both.
	 *
	 * @param finer   pixels in a unit @param coarser units in a pixel; one of the two is 1
	 */
	private record Grain(int finer, int coarser) {

		static Grain of(int dpi) {
			return new Grain(Math.max(1, (COARSEST_DPI + dpi - 1) / dpi), Math.max(1, dpi / FINEST_DPI));
		}

		int pixels(int units) {
			return units * finer / coarser;
		}

		int units(int pixels) {
			return Math.max(coarser, pixels / finer * coarser);
		}

		int whole(int units) {
			return (units + coarser - 1) / coarser * coarser;
		}
	}
}
