package org.frisket.benchmarks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.toolpath.Carriage;
import org.frisket.toolpath.Line;
import org.frisket.toolpath.Run;
import org.frisket.toolpath.RunChoices;
import org.frisket.toolpath.RunPlanner;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.Timeline;
import org.frisket.toolpath.ToolMotion;
import org.frisket.toolpath.blade.TrailingBlade;
import org.frisket.toolpath.motion.Drive;
import org.frisket.toolpath.order.Stops;
import org.frisket.toolpath.order.Tour;

/**
 * Runs of gift tags, each of an outer cut with a round hole and two windows: how long planning takes, how that grows,
 * and how much is travelled beside nearest neighbours that keep what has to wait: from where the lines are drawn to
 * begin, and through the starts that were planned.
 */
final class RunBenchmark {

	private static final int[] COUNTS = { 1000, 10_000 };
	private static final int LINES = 4;
	private static final double PITCH = 30;
	private static final double ARM = 4.0 / 3 * (Math.sqrt(2) - 1);
	private static final Carriage CARRIAGE = new Carriage(new Drive(400, 4000, 0.02), 0.1, 0.1, 30, Point.ORIGIN, false, 0.02);
	private static final Map<String, ToolMotion> TOOLS = Map.of("blade",
			new ToolMotion("blade", new TrailingBlade(0.25, Math.toRadians(10)), new Drive(100, 1000, 0.02)));

	private RunBenchmark() {
	}

	static void run() {
		double[] seconds = new double[COUNTS.length];
		for (int each = 0; each < COUNTS.length; each++) {
			int n = COUNTS[each];
			List<Line> lines = tags(n / LINES);
			Run[] planned = new Run[2];
			RunChoices plain = choices(0);
			RunChoices shuffled = choices(10L * n);
			seconds[each] = Stopwatch.cpu(true, () -> planned[0] = RunPlanner.plan(lines, TOOLS, CARRIAGE, plain, Monitor.NONE),
					() -> planned[1] = RunPlanner.plan(lines, TOOLS, CARRIAGE, shuffled, Monitor.NONE))[1] / 1e3;
			double drawn = nearest(lines, lines.stream().map(line -> line.contour().start()).toList(),
					lines.stream().map(line -> line.contour().start()).toList());
			List<Stroke> strokes = planned[1].strokes().toList();
			double same = nearest(strokes.stream().map(Stroke::line).toList(), strokes.stream().map(Stroke::start).toList(),
					strokes.stream().map(Stroke::end).toList());
			System.out.printf("run of %d contours: planned in %.2f s; travels %.3f of nearest neighbours from where they are "
					+ "drawn, %.3f of those through the same starts (%.3f without shuffles)%n", n, seconds[each],
					travel(planned[1]) / drawn, travel(planned[1]) / same, travel(planned[0]) / same);
		}
		System.out.printf("run: ten times as many contours take %.1f times as long%n", seconds[1] / seconds[0]);
	}

	private static RunChoices choices(long shuffles) {
		return new RunChoices(1, 0.5, false, RunChoices.Tabs.NONE, RunChoices.PassOrder.PART, 1, 0.5,
				RunChoices.Direction.EITHER, shuffles, 1);
	}

	private static double travel(Run run) {
		return Timeline.of(run, TOOLS, CARRIAGE).travelLength();
	}

	/** Each outer cut after what it holds. */
	private static double nearest(List<Line> lines, List<Point> in, List<Point> out) {
		Map<String, Integer> outer = new HashMap<>();
		for (int i = 0; i < lines.size(); i++) {
			if (lines.get(i).id().endsWith(".0")) {
				outer.put(lines.get(i).part(), i);
			}
		}
		int[] after = IntStream.range(0, lines.size()).map(i -> {
			int last = outer.get(lines.get(i).part());
			return last == i ? -1 : last;
		}).toArray();
		return Tour.nearest(new Stops(in.toArray(Point[]::new), out.toArray(Point[]::new), after), Point.ORIGIN, true).travel();
	}

	private static List<Line> tags(int count) {
		SplittableRandom random = new SplittableRandom(count);
		int columns = (int) Math.ceil(Math.sqrt(count));
		List<Line> lines = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			double x = PITCH * (i % columns) + 4 * random.nextDouble();
			double y = PITCH * (i / columns) + 4 * random.nextDouble();
			String part = "tag " + i;
			List<Contour> contours = List.of(box(x, y, 24, 24), round(x + 12, y + 5, 2), box(x + 3, y + 10, 8, 8),
					round(x + 17, y + 14, 4));
			for (int k = 0; k < LINES; k++) {
				lines.add(new Line(part + "." + k, "job", part, contours.get(k), Stage.CUT, "blade", 1));
			}
		}
		return lines;
	}

	private static Contour box(double x, double y, double width, double height) {
		return Contour.polygon(List.of(new Point(x, y), new Point(x + width, y), new Point(x + width, y + height),
				new Point(x, y + height)));
	}

	private static Contour round(double x, double y, double r) {
		Point middle = new Point(x, y);
		List<Segment> quarters = new ArrayList<>();
		Point from = new Point(r, 0);
		for (int i = 0; i < 4; i++) {
			Point to = i == 3 ? new Point(r, 0) : from.quarterTurn();
			quarters.add(new Cubic(middle.plus(from), middle.plus(from).plus(from.quarterTurn().times(ARM)),
					middle.plus(to).minus(to.quarterTurn().times(ARM)), middle.plus(to)));
			from = to;
		}
		return Contour.closed(quarters);
	}
}
