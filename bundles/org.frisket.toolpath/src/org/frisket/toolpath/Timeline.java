package org.frisket.toolpath;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.frisket.geometry.Point;
import org.frisket.toolpath.motion.Drive;
import org.frisket.toolpath.motion.MotionTime;
import org.frisket.toolpath.track.Move;

/** When what of a run happens. */
public final class Timeline {

	/** What the machine is at. */
	public enum Kind {
		/** It waits for somebody to change the tool. */
		STOP,
		/** It goes to the next stroke or, after the last one, home, lifted. */
		TRAVEL, LOWER, STROKE, LIFT
	}

	/**
	 * A stretch of time.
	 *
	 * @param from   in seconds from the start
	 * @param to     in seconds
	 * @param leg    of the run, from 0
	 * @param stroke of the leg, from 0: under way, or the next one; after the last stroke the number of strokes
	 * @param start  where the axis is at the beginning
	 * @param end    where it is at the end
	 */
	public record Span(Kind kind, double from, double to, int leg, int stroke, Point start, Point end) {

		public double seconds() {
			return to - from;
		}
	}

	private final Run run;
	private final Map<String, ToolMotion> tools;
	private final Carriage carriage;
	private final List<Span> spans = new ArrayList<>();
	/** For each span of a stroke when its moves end, in seconds from its start; else null. */
	private final List<double[]> moves = new ArrayList<>();
	private double now;
	private Point at;

	private Timeline(Run run, Map<String, ToolMotion> tools, Carriage carriage) {
		this.run = run;
		this.tools = tools;
		this.carriage = carriage;
		at = carriage.home();
	}

	/**
	 * The times of a run, from home and back there.
	 *
	 * @param tools by id; all that the run's legs name
	 */
	public static Timeline of(Run run, Map<String, ToolMotion> tools, Carriage carriage) {
		Timeline timeline = new Timeline(run, tools, carriage);
		for (int leg = 0; leg < run.legs().size(); leg++) {
			if (run.stopsBefore(leg)) {
				timeline.add(Kind.STOP, carriage.change(), leg, 0, timeline.at, null);
			}
			timeline.addLeg(leg);
		}
		if (!timeline.spans.isEmpty()) {
			int last = run.legs().size() - 1;
			timeline.travel(carriage.home(), last, run.legs().get(last).strokes().size());
		}
		return timeline;
	}

	private void addLeg(int leg) {
		List<Stroke> strokes = run.legs().get(leg).strokes();
		Drive drive = tools.get(run.legs().get(leg).tool()).drive();
		int next;
		for (int i = 0; i < strokes.size(); i = next) {
			next = i + 1;
			while (next < strokes.size() && strokes.get(next).continues(strokes.get(next - 1))) {
				next++;
			}
			travel(strokes.get(i).start(), leg, i);
			add(Kind.LOWER, carriage.lower(), leg, i, at, null);
			addStrokes(strokes.subList(i, next), drive, leg, i);
			add(Kind.LIFT, carriage.lift(), leg, next - 1, at, null);
		}
	}

	/** Strokes without lifting are one motion. */
	private void addStrokes(List<Stroke> strokes, Drive drive, int leg, int first) {
		MotionTime time = MotionTime.of(strokes.stream().flatMap(stroke -> stroke.axis().stream()).toList(), drive,
				strokes.stream().flatMap(stroke -> stroke.speeds().stream()).toList());
		int move = 0;
		for (int i = 0; i < strokes.size(); i++) {
			double[] ends = new double[strokes.get(i).axis().size()];
			double seconds = 0;
			for (int k = 0; k < ends.length; k++) {
				seconds += time.seconds(move++);
				ends[k] = seconds;
			}
			add(Kind.STROKE, seconds, leg, first + i, strokes.get(i).end(), ends);
		}
	}

	private void travel(Point to, int leg, int stroke) {
		add(Kind.TRAVEL, MotionTime.travel(at.distance(to), carriage.travel()), leg, stroke, to, null);
	}

	private void add(Kind kind, double seconds, int leg, int stroke, Point end, double[] ends) {
		spans.add(new Span(kind, now, now + seconds, leg, stroke, at, end));
		moves.add(ends);
		now += seconds;
		at = end;
	}

	/** In their order, each from where the one before ends; the last one leads home. */
	public List<Span> spans() {
		return Collections.unmodifiableList(spans);
	}

	/** Of the whole run, stops for tools included, in seconds. */
	public double seconds() {
		return now;
	}

	/** Of one kind of work, in seconds. */
	public double seconds(Kind kind) {
		return spans.stream().filter(span -> span.kind() == kind).mapToDouble(Span::seconds).sum();
	}

	/** The number of the span at a time; the first or the last one beyond both ends; -1 if there is none. */
	public int spanAt(double seconds) {
		int low = 0;
		int high = spans.size() - 1;
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (spans.get(middle).to() > seconds) {
				high = middle;
			} else {
				low = middle + 1;
			}
		}
		return high;
	}

	/**
	 * Where the axis is at a time; the first or last place beyond both ends. Each move is taken to be passed at one
	 * speed, so that within a long one the place is off by what speeding up and slowing down make of it, and right at
	 * its ends.
	 *
	 * @param seconds from the start
	 */
	public Point at(double seconds) {
		int number = spanAt(seconds);
		if (number < 0) {
			return carriage.home();
		}
		Span span = spans.get(number);
		double within = Math.max(0, Math.min(span.seconds(), seconds - span.from()));
		if (span.kind() == Kind.STROKE) {
			List<Move> axis = run.legs().get(span.leg()).strokes().get(span.stroke()).axis();
			double[] ends = moves.get(number);
			int found = Arrays.binarySearch(ends, within);
			int move = Math.min(ends.length - 1, found >= 0 ? found : -found - 1);
			double from = move == 0 ? 0 : ends[move - 1];
			double share = ends[move] > from ? Math.min(1, (within - from) / (ends[move] - from)) : 1;
			return axis.get(move).at(share * axis.get(move).length());
		}
		return span.start().towards(span.end(), span.seconds() == 0 ? 1 : within / span.seconds());
	}

	/** The way travelled between strokes, from home and back there, in mm. */
	public double travelLength() {
		return spans.stream().filter(span -> span.kind() == Kind.TRAVEL)
				.mapToDouble(span -> span.start().distance(span.end())).sum();
	}

	/**
	 * The seconds that each job takes, by its id: its strokes, with setting down and lifting and the travel to them. A
	 * stop for a tool is shared evenly by the jobs that are worked with it then, the way home by all. They sum up to
	 * the run.
	 */
	public Map<String, Double> secondsByJob() {
		Map<String, Double> sums = new LinkedHashMap<>();
		run.strokes().forEach(stroke -> sums.putIfAbsent(stroke.line().job(), 0.0));
		for (Span span : spans) {
			List<Stroke> strokes = run.legs().get(span.leg()).strokes();
			List<String> jobs = span.stroke() == strokes.size() ? List.copyOf(sums.keySet())
					: span.kind() == Kind.STOP ? strokes.stream().map(stroke -> stroke.line().job()).distinct().toList()
							: List.of(strokes.get(span.stroke()).line().job());
			jobs.forEach(job -> sums.merge(job, span.seconds() / jobs.size(), Double::sum));
		}
		return sums;
	}

	/** The way that the tips go in the stock for each job, by its id, in mm; each pass counts. */
	public Map<String, Double> lengthByJob() {
		return run.strokes().collect(Collectors.groupingBy(stroke -> stroke.line().job(), LinkedHashMap::new,
				Collectors.summingDouble(Stroke::length)));
	}

	/** The way that the tip of each tool goes in the stock, by the tool's id, in mm; each pass counts. */
	public Map<String, Double> lengthByTool() {
		return run.legs().stream().collect(Collectors.groupingBy(Leg::tool, LinkedHashMap::new,
				Collectors.summingDouble(leg -> leg.strokes().stream().mapToDouble(Stroke::length).sum())));
	}
}
