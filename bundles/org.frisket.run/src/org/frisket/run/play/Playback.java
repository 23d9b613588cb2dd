package org.frisket.run.play;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.run.MachineRun;
import org.frisket.toolpath.Leg;
import org.frisket.toolpath.Line;
import org.frisket.toolpath.Run;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.Timeline;
import org.frisket.toolpath.Timeline.Kind;
import org.frisket.toolpath.Timeline.Span;

/**
 * A run laid out in time: what is done at each moment of it, and where to jump. Strokes are counted over all legs from 0;
 * times are in seconds from the start.
 */
public final class Playback {

	/** Times this near are the same: a jump must not stay where it is. */
	private static final double SAME_SECONDS = 1e-6;

	private final MachineRun machineRun;
	private final List<Span> spans;
	private final double[] spanEnds;
	private final List<Stroke> strokes;
	private final List<StrokeWay> ways = new ArrayList<>();
	private final List<LegLine> legs = new ArrayList<>();
	private final int[] firsts;
	private final double[] froms;
	private final double[] tos;
	/** In mm: the strokes before each. */
	private final double[] worked;
	private final double[] partTimes;
	private final double[] toolTimes;

	private Playback(MachineRun machineRun, Monitor monitor) {
		this.machineRun = machineRun;
		Run run = machineRun.run();
		spans = machineRun.timeline().spans();
		spanEnds = spans.stream().mapToDouble(Span::to).toArray();
		strokes = run.strokes().toList();
		firsts = new int[run.legs().size() + 1];
		for (int leg = 0; leg < run.legs().size(); leg++) {
			firsts[leg + 1] = firsts[leg] + run.legs().get(leg).strokes().size();
		}
		froms = new double[strokes.size()];
		tos = new double[strokes.size()];
		Arrays.fill(froms, Double.NaN);
		for (Span span : spans) {
			if (span.kind() == Kind.STROKE) {
				int stroke = firsts[span.leg()] + span.stroke();
				froms[stroke] = Double.isNaN(froms[stroke]) ? span.from() : froms[stroke];
				tos[stroke] = span.to();
			}
		}
		worked = new double[strokes.size() + 1];
		for (int i = 0; i < strokes.size(); i++) {
			monitor.check();
			ways.add(StrokeWay.of(strokes.get(i).tip()));
			worked[i + 1] = worked[i] + strokes.get(i).length();
		}
		for (int leg = 0; leg < run.legs().size(); leg++) {
			legs.add(leg(leg));
		}
		partTimes = partTimes();
		toolTimes = legs.stream().filter(leg -> leg.stop() || leg == legs.get(0)).mapToDouble(LegLine::from).toArray();
	}

	/** @throws java.util.concurrent.CancellationException if the monitor cancels */
	public static Playback of(MachineRun run, Monitor monitor) {
		return new Playback(run, monitor);
	}

	private LegLine leg(int index) {
		Run run = machineRun.run();
		Leg leg = run.legs().get(index);
		double from = 0;
		double to = 0;
		boolean found = false;
		for (Span span : spans) {
			if (span.leg() == index) {
				from = found ? from : span.from();
				to = span.to();
				found = true;
			}
		}
		int first = firsts[index];
		return new LegLine(leg.stage(), machineRun.work().get(index), from, to - from, leg.strokes().size(), first,
				worked[firsts[index + 1]] - worked[first], run.stopsBefore(index));
	}

	private double[] partTimes() {
		List<Double> times = new ArrayList<>();
		for (int i = 0; i < strokes.size(); i++) {
			if (i == 0 || !isSamePart(strokes.get(i - 1).line(), strokes.get(i).line()) || isFirstOfLeg(i)) {
				times.add(froms[i]);
			}
		}
		return times.stream().mapToDouble(Double::doubleValue).toArray();
	}

	private boolean isFirstOfLeg(int stroke) {
		return Arrays.binarySearch(firsts, stroke) >= 0;
	}

	/** What belongs to no part is a part by itself. */
	private static boolean isSamePart(Line one, Line other) {
		return one.job().equals(other.job()) && one.part().equals(other.part())
				&& (!one.part().isEmpty() || one.id().equals(other.id()));
	}

	public MachineRun run() {
		return machineRun;
	}

	public List<LegLine> legs() {
		return List.copyOf(legs);
	}

	/** Of the whole run, stops included. */
	public double seconds() {
		return machineRun.timeline().seconds();
	}

	/** How often somebody changes the tool while the sheet lies in the machine. */
	public int stops() {
		return (int) legs.stream().filter(LegLine::stop).count();
	}

	/** Of all strokes, in mm. */
	public double mm() {
		return worked[strokes.size()];
	}

	/** How many strokes there are. */
	public int size() {
		return strokes.size();
	}

	public Stroke stroke(int index) {
		return strokes.get(index);
	}

	/** What is seen of a stroke. */
	public StrokeWay way(int index) {
		return ways.get(index);
	}

	/** The leg of a stroke, from 0; the last one for what comes after all strokes. */
	public int legOf(int stroke) {
		int leg = 0;
		while (leg + 1 < legs.size() && firsts[leg + 1] <= stroke) {
			leg++;
		}
		return leg;
	}

	/** When a tool is set down for a stroke. */
	public double timeOf(int stroke) {
		return froms[stroke];
	}

	/** Where the machine goes lifted, and when. */
	public List<Span> travels() {
		return spans.stream().filter(span -> span.kind() == Kind.TRAVEL).toList();
	}

	/** What the run has come to; the first or last moment for what lies beyond both ends. */
	public Moment at(double seconds) {
		double time = Math.max(0, Math.min(seconds(), seconds));
		int done = after(tos, time);
		int index = after(spanEnds, time);
		if (index == spans.size()) {
			Point last = spans.isEmpty() ? machineRun.carriage().home() : spans.get(spans.size() - 1).end();
			return new Moment(time, null, Math.max(0, legs.size() - 1), strokes.size(), done, 0, last);
		}
		Span span = spans.get(index);
		int stroke = Math.min(firsts[span.leg()] + span.stroke(), strokes.size());
		if (span.kind() == Kind.STROKE) {
			// evenly along it: how a machine gathers speed within a stroke is not seen at this scale
			double share = Math.max(0, Math.min(1, (time - froms[stroke]) / (tos[stroke] - froms[stroke])));
			return new Moment(time, span.kind(), span.leg(), stroke, done, share, ways.get(stroke).at(share));
		}
		return new Moment(time, span.kind(), span.leg(), stroke, done, 0, machineRun.timeline().at(time));
	}

	/** Of line worked up to a moment, in mm. */
	public double mm(Moment moment) {
		double under = moment.isDown() ? moment.share() * strokes.get(moment.stroke()).length() : 0;
		return worked[moment.done()] + under;
	}

	/** How many of rising times are not after one. */
	private static int after(double[] times, double time) {
		int found = Arrays.binarySearch(times, time);
		if (found < 0) {
			return -found - 1;
		}
		// of several that are the same all count
		while (found < times.length && times[found] == time) {
			found++;
		}
		return found;
	}

	private double[] times(Leap leap) {
		return switch (leap) {
		case STROKE -> froms;
		case PART -> partTimes;
		case TOOL -> toolTimes;
		};
	}

	/** The next beginning of its kind; the end of the run if there is none. */
	public double next(Leap leap, double seconds) {
		double[] times = times(leap);
		int index = after(times, seconds + SAME_SECONDS);
		return index < times.length ? times[index] : seconds();
	}

	/** The beginning of its kind before a time, be it of what is under way; the start of the run if there is none. */
	public double previous(Leap leap, double seconds) {
		double[] times = times(leap);
		int index = after(times, seconds - SAME_SECONDS) - 1;
		return index >= 0 ? times[index] : 0;
	}

	/** The last end or beginning of a stroke that is not after a time. */
	public double settled(double seconds) {
		int begun = after(froms, seconds);
		int ended = after(tos, seconds);
		return Math.max(begun > 0 ? froms[begun - 1] : 0, ended > 0 ? tos[ended - 1] : 0);
	}

	/** The stroke that is nearest to a place, if one is near enough; of several that lie on each other the first. */
	public OptionalInt near(Point place, double reachMm) {
		int nearest = -1;
		double least = reachMm;
		for (int i = 0; i < ways.size(); i++) {
			var bounds = ways.get(i).bounds();
			if (place.x() >= bounds.minX() - least && place.x() <= bounds.maxX() + least
					&& place.y() >= bounds.minY() - least && place.y() <= bounds.maxY() + least) {
				double distance = ways.get(i).distance(place);
				if (distance < least || nearest < 0 && distance == least) {
					nearest = i;
					least = distance;
				}
			}
		}
		return nearest < 0 ? OptionalInt.empty() : OptionalInt.of(nearest);
	}
}
