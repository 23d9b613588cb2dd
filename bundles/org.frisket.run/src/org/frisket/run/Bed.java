package org.frisket.run;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.material.tools.Corner;
import org.frisket.material.tools.Machine;

/**
 * Where a load lies in a machine, in the frame of the load: its corner on the side of the machine's zero is pushed home
 * there. What lies on the bench is taken to be laid where the machine can reach it.
 *
 * @param area   all that the machine reaches
 * @param usable what its margins leave of that
 * @param zero   where coordinates begin
 */
record Bed(Bounds area, Bounds usable, Point zero) {

	/** Round what lies on the bench, in mm: a trailing blade's axis goes beyond its lines. */
	private static final double ROOM = 2;

	static Bed of(Machine machine, Load load) {
		Bounds page = load.sheet().isPresent() ? load.page() : load.page().grown(ROOM);
		Machine.Area area = machine.area();
		Corner corner = machine.plotting().origin();
		boolean sheet = load.sheet().isPresent();
		double width = sheet ? area.width() : area.usableWidth();
		double height = sheet ? area.height() : area.usableHeight();
		double minX = switch (corner) {
		case LOWER_LEFT, UPPER_LEFT -> page.minX();
		case LOWER_RIGHT, UPPER_RIGHT -> page.maxX() - width;
		case CENTRE -> page.centre().x() - width / 2;
		};
		double minY = switch (corner) {
		case UPPER_LEFT, UPPER_RIGHT -> page.minY();
		case LOWER_LEFT, LOWER_RIGHT -> page.maxY() - height;
		case CENTRE -> page.centre().y() - height / 2;
		};
		Bounds within = new Bounds(minX, minY, minX + width, minY + height);
		Bounds whole = sheet ? within
				: new Bounds(minX - area.left(), minY - area.top(), within.maxX() + area.right(), within.maxY() + area.bottom());
		Bounds usable = sheet
				? new Bounds(minX + area.left(), minY + area.top(), within.maxX() - area.right(), within.maxY() - area.bottom())
				: within;
		return new Bed(whole, usable, corner(machine.plotting().inMargins() ? usable : whole, corner));
	}

	private static Point corner(Bounds bounds, Corner corner) {
		return switch (corner) {
		case LOWER_LEFT -> new Point(bounds.minX(), bounds.maxY());
		case LOWER_RIGHT -> new Point(bounds.maxX(), bounds.maxY());
		case UPPER_LEFT -> new Point(bounds.minX(), bounds.minY());
		case UPPER_RIGHT -> new Point(bounds.maxX(), bounds.minY());
		case CENTRE -> bounds.centre();
		};
	}

	/** By how much something stands out of what can be worked, in mm; 0 or less if it does not. */
	double beyond(Bounds what) {
		return Math.max(Math.max(usable.minX() - what.minX(), what.maxX() - usable.maxX()),
				Math.max(usable.minY() - what.minY(), what.maxY() - usable.maxY()));
	}
}
