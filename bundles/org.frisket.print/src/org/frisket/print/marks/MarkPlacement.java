package org.frisket.print.marks;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.model.MarkKind;
import org.frisket.print.register.RegisterException;

/**
 * A proposal of where register marks go: as near to the corners of the sheet as parts and margin allow, for marks that lie far
 * apart carry an error of theirs the least way beyond them. The first is a pennant, and one of the others stands away from
 * its corner, so that a sheet that was turned or mirrored shows.
 *
 * @param design how they are drawn, but for the first
 * @param count  how many, at least {@value MarkPlan#LEAST_MARKS}
 * @param gap    between a mark and a part, mm
 */
public record MarkPlacement(MarkDesign design, int count, double gap) {

	/** How far along the longer side the odd one stands away from its corner. */
	private static final double ODD = 0.15;

	/**
	 * A plan for a sheet.
	 *
	 * @param margin that the printer leaves bare @param parts the boxes of what lies on the sheet
	 * @throws RegisterException if there is no room for a mark; says for which
	 */
	public MarkPlan propose(double width, double height, double margin, List<Bounds> parts) throws RegisterException {
		List<Mark> marks = new ArrayList<>();
		List<Point> targets = targets(width, height);
		for (int i = 0; i < count; i++) {
			Mark mark = nearest(i, targets.get(i % targets.size()), width, height, margin, parts, marks);
			if (mark == null) {
				throw new RegisterException(NLS.bind(Messages.MarkPlacement_noRoom, i + 1, count));
			}
			marks.add(mark);
		}
		try {
			return new MarkPlan(width, height, margin, marks);
		} catch (IllegalArgumentException e) {
			throw new RegisterException(e.getMessage());
		}
	}

	/**
	 * A square for the code of the sheet, in the middle of the upper edge or as near to it as there is room.
	 *
	 * @param side  of the square, mm, with the bare margin that belongs to a code
	 * @param parts the boxes of what lies on the sheet
	 * @throws RegisterException if there is no room for it
	 */
	public Bounds codeRoom(MarkPlan plan, double side, List<Bounds> parts) throws RegisterException {
		Bounds square = new Bounds(0, 0, side, side);
		return FreePlace
				.nearest(new Point((plan.width() - side) / 2, 0), square, plan.printable(), box -> isFree(box, parts, plan.marks()))
				.map(square::moved).orElseThrow(() -> new RegisterException(Messages.MarkPlacement_noRoomForCode));
	}

	/** Four corners, one of them left; then middles of sides, also off. */
	private static List<Point> targets(double width, double height) {
		boolean wide = width >= height;
		Point odd = wide ? new Point(width * ODD, height) : new Point(width, height * (1 - ODD));
		List<Point> all = new ArrayList<>(List.of(new Point(0, 0), new Point(width, 0), new Point(width, height), odd));
		if (!wide) {
			all.set(2, odd);
			all.set(3, new Point(0, height));
		}
		all.add(wide ? new Point(width * (0.5 + ODD / 2), 0) : new Point(0, height * (0.5 + ODD / 2)));
		all.add(wide ? new Point(width * (0.5 - ODD), height) : new Point(width, height * (0.5 - ODD)));
		all.add(wide ? new Point(0, height * (0.5 - ODD)) : new Point(width * (0.5 - ODD), 0));
		all.add(wide ? new Point(width, height * (0.5 + ODD)) : new Point(width * (0.5 + ODD), height));
		return all;
	}

	private Mark nearest(int index, Point target, double width, double height, double margin, List<Bounds> parts,
			List<Mark> before) {
		MarkDesign drawn = index == 0 ? design.as(MarkKind.PENNANT) : design;
		double turn = drawn.kind() == MarkKind.CORNER ? inwards(target, width, height) : 0;
		Bounds extent = drawn.shape(Point.ORIGIN, turn).bounds();
		return FreePlace.nearest(target, extent, new Bounds(margin, margin, width - margin, height - margin),
				box -> isFree(box, parts, before)).map(best -> new Mark(drawn, best, turn)).orElse(null);
	}

	private boolean isFree(Bounds mark, List<Bounds> parts, List<Mark> before) {
		double room = Math.max(gap, design.quiet());
		return parts.stream().noneMatch(part -> MarkCheck.gap(mark, part) < room)
				&& before.stream().noneMatch(other -> MarkCheck.gap(mark, other.bounds()) < 2 * room);
	}

	/** A corner mark opens towards the middle of the sheet. */
	private static double inwards(Point target, double width, double height) {
		boolean east = target.x() > width / 2;
		boolean south = target.y() > height / 2;
		int quarters = east ? south ? 2 : 1 : south ? 3 : 0;
		return quarters * Math.PI / 2;
	}
}
