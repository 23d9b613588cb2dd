package org.frisket.toolpath;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Point;
import org.frisket.toolpath.motion.MotionTime;
import org.frisket.toolpath.track.Move;

/** When what of a run happens. */
public final class Timeline {

	/** What the machine is at. */
	public enum Kind {
		/** It waits for somebody to change the tool. */
		STOP,
		/** It goes to the next stroke, lifted. */
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

	private final List<Span> spans = new ArrayList<>();
	private final Run run;
	private double now;

	private Timeline(Run run) {
		this.run = run;
	}

	/** @param tools by id; all that the run's legs name */
	public static Timeline of(Run run, Map<String, ToolMotion> tools, Carriage carriage) {
		Timeline timeline = new Timeline(run);
		Point at = carriage.home();
		for (int leg = 0; leg < run.legs().size(); leg++) {
			if (run.stopsBefore(leg)) {
				timeline.add(Kind.STOP, carriage.change(), leg, 0, at, at);
			}
			List<Stroke> strokes = run.legs().get(leg).strokes();
			for (int i = 0; i < strokes.size(); i++) {
				Stroke stroke = strokes.get(i);
				double way = Math.hypot(stroke.start().x() - at.x(), stroke.start().y() - at.y());
				timeline.add(Kind.TRAVEL, MotionTime.travel(way, carriage.travel()), leg, i, at, stroke.start());
				timeline.add(Kind.LOWER, carriage.lower(), leg, i, stroke.start(), stroke.start());
				timeline.add(Kind.STROKE, MotionTime.of(stroke.axis(), tools.get(run.legs().get(leg).tool()).drive()).seconds(), leg, i,
						stroke.start(), stroke.end());
				timeline.add(Kind.LIFT, carriage.lift(), leg, i, stroke.end(), stroke.end());
				at = stroke.end();
			}
		}
		return timeline;
	}

	private void add(Kind kind, double seconds, int leg, int stroke, Point start, Point end) {
		spans.add(new Span(kind, now, now + seconds, leg, stroke, start, end));
		now += seconds;
	}

	public List<Span> spans() {
		return spans;
	}

	/** Of the whole run, stops for tools included, in seconds. */
	public double seconds() {
		return now;
	}

	/** Of one kind of work, in seconds. */
	public double seconds(Kind kind) {
		return spans.stream().filter(span -> span.kind() == kind).mapToDouble(Span::seconds).sum();
	}

	/** Where the axis is at a time; the first or last place beyond both ends. @param seconds from the start */
	public Point at(double seconds) {
		for (Span span : spans) {
			if (seconds < span.to()) {
				double share = span.seconds() == 0 ? 0 : Math.max(0, (seconds - span.from()) / span.seconds());
				return span.kind() == Kind.STROKE ? along(run.legs().get(span.leg()).strokes().get(span.stroke()).axis(), share)
						: new Point(span.start().x() + share * (span.end().x() - span.start().x()),
								span.start().y() + share * (span.end().y() - span.start().y()));
			}
		}
		return spans.isEmpty() ? new Point(0, 0) : spans.get(spans.size() - 1).end();
	}

	private static Point along(List<Move> moves, double share) {
		double way = share * moves.stream().mapToDouble(Move::length).sum();
		for (Move move : moves) {
			if (way <= move.length()) {
				return move.at(way);
			}
			way -= move.length();
		}
		return moves.get(moves.size() - 1).end();
	}
}
