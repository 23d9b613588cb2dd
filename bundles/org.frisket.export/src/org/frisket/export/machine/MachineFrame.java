package org.frisket.export.machine;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.Handoff;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.material.tools.Corner;
import org.frisket.material.tools.Machine;
import org.frisket.model.Element;
import org.frisket.prepare.PreparedElement;
import org.frisket.run.MachineRun;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Straight;
import org.frisket.toolpath.track.Tracks;

/**
 * The frame a machine works in: its zero is the run's home, its axes run as the studio described them, and lengths are
 * multiplied with what calibration found. In mm.
 */
public final class MachineFrame {

	/** In mm, as far as a machine can be told to go beyond its area: what rounding makes. */
	private static final double SLACK = 1e-6;
	/** No machine is larger, in mm. */
	private static final double FARTHEST = 1e7;
	private static final double QUARTER = Math.PI / 2;

	private final Handoff handoff;
	private final MachineRun run;
	/** Null for a machine that nobody has described. */
	private final Bounds reach;
	private final Point zero;
	private final double xFactor;
	private final double yFactor;

	public MachineFrame(Handoff handoff, MachineRun run) {
		this.handoff = handoff;
		this.run = run;
		Machine.Plotting plotting = run.machine().plotting();
		zero = run.carriage().home();
		reach = run.machine().id().equals(Machine.plain().id()) ? null : reach(run.machine().area(), plotting, zero);
		xFactor = plotting.xRight() ? plotting.scaleX() : -plotting.scaleX();
		yFactor = plotting.yUp() ? -plotting.scaleY() : plotting.scaleY();
	}

	/** All that it reaches, its margins too: what lies in those is a finding of the run. */
	private static Bounds reach(Machine.Area area, Machine.Plotting plotting, Point zero) {
		Bounds whole = new Bounds(0, 0, area.width(), area.height());
		Bounds usable = new Bounds(area.left(), area.top(), area.width() - area.right(), area.height() - area.bottom());
		return whole.moved(zero.minus(corner(plotting.inMargins() ? usable : whole, plotting.origin()))).grown(SLACK);
	}

	private static Point corner(Bounds box, Corner corner) {
		return switch (corner) {
		case UPPER_LEFT -> new Point(box.minX(), box.minY());
		case UPPER_RIGHT -> new Point(box.maxX(), box.minY());
		case LOWER_LEFT -> new Point(box.minX(), box.maxY());
		case LOWER_RIGHT -> new Point(box.maxX(), box.maxY());
		case CENTRE -> box.centre();
		};
	}

	/** Where a place of the page is to the machine. */
	public Point place(Point onPage) {
		return new Point((onPage.x() - zero.x()) * xFactor, (onPage.y() - zero.y()) * yFactor);
	}

	/**
	 * The axis of a stroke, as the machine is led. Arcs stay arcs also where both axes are out of scale differently.
	 *
	 * @param tolerance in mm, positive: how far arcs may be from the arcs they replace
	 * @throws IOException if the machine does not reach there; the message names the part
	 */
	public List<Move> axis(Stroke stroke, double tolerance) throws IOException {
		List<Move> moves = new ArrayList<>(stroke.axis().size());
		for (Move move : stroke.axis()) {
			moves.addAll(follow(stroke, move, tolerance));
		}
		return moves;
	}

	/** One move of the axis of a stroke, as {@link #axis} gives all of them; not empty. */
	public List<Move> follow(Stroke stroke, Move move, double tolerance) throws IOException {
		requireReach(stroke, move);
		if (!(move instanceof Arc arc)) {
			return List.of(new Straight(place(move.start()), place(move.end())));
		}
		if (Math.abs(xFactor) == Math.abs(yFactor)) {
			double from = xFactor > 0 ? arc.from() : Math.PI - arc.from();
			boolean turnsOver = xFactor > 0 != yFactor > 0;
			// mirroring at the x axis turns an angle round, at the y axis it becomes the rest to π
			return List.of(new Arc(place(arc.centre()), arc.radius() * Math.abs(xFactor), yFactor > 0 ? from : -from,
					turnsOver ? -arc.sweep() : arc.sweep()));
		}
		OutlineBuilder ellipse = new OutlineBuilder(tolerance / 4);
		ellipse.startArc(arc.centre(), arc.radius(), arc.radius(), 0, arc.from(), arc.sweep());
		List<Move> moves = ellipse.build().contours().stream().flatMap(contour -> Tracks
				.arcs(contour.transformed(Transform.translation(-zero.x(), -zero.y()).then(Transform.scaling(xFactor, yFactor))),
						tolerance * 3 / 4)
				.moves().stream()).toList();
		return moves.isEmpty() ? List.of(new Straight(place(arc.start()), place(arc.end()))) : moves;
	}

	private void requireReach(Stroke stroke, Move move) throws IOException {
		require(stroke, move.start());
		require(stroke, move.end());
		if (move instanceof Arc arc && reach != null) {
			double least = Math.min(arc.from(), arc.from() + arc.sweep());
			double most = Math.max(arc.from(), arc.from() + arc.sweep());
			for (double angle = Math.ceil(least / QUARTER) * QUARTER; angle < most; angle += QUARTER) {
				require(stroke, new Point(arc.centre().x() + arc.radius() * Math.cos(angle),
						arc.centre().y() + arc.radius() * Math.sin(angle)));
			}
		}
	}

	private void require(Stroke stroke, Point place) throws IOException {
		if (!place.isFinite()) {
			throw new IOException(NLS.bind(Messages.MachineFrame_noPlace, part(stroke)));
		}
		if (Math.abs(place.x()) + Math.abs(place.y()) > FARTHEST) {
			throw new IOException(NLS.bind(Messages.MachineFrame_tooFar, part(stroke)));
		}
		if (reach != null && !reach.contains(place)) {
			throw new IOException(NLS.bind(Messages.MachineFrame_outOfReach,
					new Object[] { part(stroke), shown(place.x() - reach.minX()), shown(place.y() - reach.minY()),
							run.machine().name(), shown(run.machine().area().width()), shown(run.machine().area().height()) }));
		}
	}

	private static String shown(double mm) {
		return Digits.shortest(mm, 1);
	}

	/** What the studio calls the part a stroke works. */
	public String part(Stroke stroke) {
		String id = stroke.line().id();
		return handoff.job().element(id).map(PreparedElement::element).map(Element::getName).filter(name -> !name.isBlank())
				.orElse(id);
	}

	/**
	 * Chords of an arc, without its start.
	 *
	 * @param tolerance in mm, positive: how far a chord may be from the arc
	 */
	public static List<Point> chords(Arc arc, double tolerance) {
		// e = r (1 - cos(a/2)); a third of a turn at most, or a small arc would lose its shape
		double widest = Math.min(2 * Math.PI / 3, 2 * Math.acos(Math.max(-1, 1 - tolerance / arc.radius())));
		int count = (int) Math.max(1, Math.ceil(Math.abs(arc.sweep()) / widest - 1e-9));
		List<Point> ends = new ArrayList<>(count);
		for (int i = 1; i < count; i++) {
			ends.add(arc.at(arc.length() * i / count));
		}
		ends.add(arc.end());
		return ends;
	}
}
