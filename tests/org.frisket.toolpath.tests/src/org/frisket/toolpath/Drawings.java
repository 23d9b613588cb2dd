package org.frisket.toolpath;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.toolpath.blade.TrailingBlade;
import org.frisket.toolpath.motion.Drive;
import org.frisket.toolpath.track.Move;

/** Lines to plan with, and what is planned with them. */
public final class Drawings {

	public static final double OFFSET = 0.25;
	public static final Drive DRIVE = new Drive(50, 1000, 0.02);
	public static final Carriage ARCS = new Carriage(new Drive(300, 2000, 0.02), 0.1, 0.15, 30, new Point(0, 0), true,
			0.01);
	public static final Carriage CHORDS = new Carriage(ARCS.travel(), 0.1, 0.15, 30, new Point(0, 0), false, 0.01);
	public static final String PEN = "pen";
	public static final String BLADE = "blade";
	public static final String OTHER = "other";
	/** Of the pen, and of two blades that are swung round corners of 10 degrees and more. */
	public static final Map<String, ToolMotion> TOOLS = Map.of(PEN, new ToolMotion(PEN, new TrailingBlade(0, 0), DRIVE), BLADE,
			new ToolMotion(BLADE, new TrailingBlade(OFFSET, Math.toRadians(10)), DRIVE), OTHER,
			new ToolMotion(OTHER, new TrailingBlade(OFFSET, Math.toRadians(10)), DRIVE));

	/** The length of control arms of a quarter of a circle of radius 1, within 0.03 % of it. */
	private static final double ARM = 4.0 / 3 * (Math.sqrt(2) - 1);

	private Drawings() {
	}

	public static Run plan(List<Line> lines, Carriage carriage, RunChoices choices) {
		return RunPlanner.plan(lines, TOOLS, carriage, choices, Monitor.NONE);
	}

	/** The stroke of a line that is worked in one. */
	public static Stroke only(Line line, Carriage carriage, RunChoices choices) {
		List<Stroke> strokes = plan(List.of(line), carriage, choices).strokes().toList();
		if (strokes.size() != 1) {
			throw new AssertionError(strokes.size() + " strokes");
		}
		return strokes.get(0);
	}

	public static Line cut(String id, Contour contour) {
		return new Line(id, "job", id, contour, Stage.CUT, BLADE, 1);
	}

	public static RunChoices shuffled(long shuffles) {
		return new RunChoices(0, 0, false, RunChoices.Tabs.NONE, RunChoices.PassOrder.PART, 0, 1,
				RunChoices.Direction.EITHER, shuffles, 1);
	}

	public static Contour polygon(double... xy) {
		List<Point> corners = new ArrayList<>();
		for (int i = 0; i < xy.length; i += 2) {
			corners.add(new Point(xy[i], xy[i + 1]));
		}
		return Contour.polygon(corners);
	}

	public static Contour polyline(double... xy) {
		List<Segment> lines = new ArrayList<>();
		for (int i = 2; i < xy.length; i += 2) {
			lines.add(new org.frisket.geometry.Line(new Point(xy[i - 2], xy[i - 1]), new Point(xy[i], xy[i + 1])));
		}
		return Contour.open(lines);
	}

	public static Contour box(double x, double y, double width, double height) {
		return polygon(x, y, x + width, y, x + width, y + height, x, y + height);
	}

	/** A circle of four cubics. */
	public static Contour circle(double x, double y, double r) {
		List<Segment> quarters = new ArrayList<>();
		Point[] at = { new Point(x + r, y), new Point(x, y + r), new Point(x - r, y), new Point(x, y - r) };
		for (int i = 0; i < 4; i++) {
			Point from = at[i];
			Point to = at[(i + 1) % 4];
			Point along = from.minus(new Point(x, y)).quarterTurn();
			Point back = to.minus(new Point(x, y)).quarterTurn();
			quarters.add(new Cubic(from, from.plus(along.times(ARM)), to.minus(back.times(ARM)), to));
		}
		return Contour.closed(quarters);
	}

	/** A star-shaped polygon round a place, its corners between two distances. */
	public static Contour jagged(SplittableRandom random, double x, double y, double least, double most, int corners) {
		double[] xy = new double[2 * corners];
		for (int i = 0; i < corners; i++) {
			double a = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / corners;
			double r = least + (most - least) * random.nextDouble();
			xy[2 * i] = x + r * Math.cos(a);
			xy[2 * i + 1] = y + r * Math.sin(a);
		}
		return polygon(xy);
	}

	/** A smooth curve round a place: cubics through places between two distances, tangents along their neighbours. */
	public static Contour smooth(SplittableRandom random, double x, double y, double least, double most, int nodes) {
		List<Point> places = jagged(random, x, y, least, most, nodes).flattened(1);
		List<Segment> cubics = new ArrayList<>();
		for (int i = 0; i < nodes; i++) {
			Point p = places.get(i);
			Point q = places.get((i + 1) % nodes);
			Point atP = q.minus(places.get((i + nodes - 1) % nodes)).times(1.0 / 6);
			Point atQ = places.get((i + 2) % nodes).minus(p).times(1.0 / 6);
			cubics.add(new Cubic(p, p.plus(atP), q.minus(atQ), q));
		}
		return Contour.closed(cubics);
	}

	public static double length(List<Move> moves) {
		return moves.stream().mapToDouble(Move::length).sum();
	}

	/** The way between strokes, from home and back. */
	public static double travel(Run run, Point home) {
		double sum = 0;
		Point at = home;
		for (Stroke stroke : run.strokes().toList()) {
			sum += at.distance(stroke.start());
			at = stroke.end();
		}
		return sum + at.distance(home);
	}
}
