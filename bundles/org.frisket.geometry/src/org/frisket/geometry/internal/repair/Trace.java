package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** A line as chords that know where on it they lie, by the length of the way along them. */
final class Trace {

	/**
	 * @param from length of the way to its start, mm
	 * @param to   length of the way to its end
	 */
	record Chord(Trace trace, Point start, Point end, int segment, double t0, double t1, double from, double to) {

		double length() {
			return to - from;
		}
	}

	private final Contour line;
	private final List<Chord> chords = new ArrayList<>();
	/** Length of the way to the start of each segment, and to the end of the last. */
	private final double[] joints;

	/** @param deviation of the chords from the line, in mm */
	Trace(Contour line, double deviation) {
		this.line = line;
		List<Segment> segments = line.segments();
		joints = new double[segments.size() + 1];
		double[] way = { 0 };
		for (int i = 0; i < segments.size(); i++) {
			Segment segment = segments.get(i);
			int index = i;
			double[] last = { 0 };
			segment.flatten(deviation, t -> {
				Point start = segment.at(last[0]);
				Point end = segment.at(t);
				double to = way[0] + start.distance(end);
				chords.add(new Chord(this, start, end, index, last[0], t, way[0], to));
				last[0] = t;
				way[0] = to;
			});
			joints[i + 1] = way[0];
		}
	}

	Contour line() {
		return line;
	}

	List<Chord> chords() {
		return chords;
	}

	double length() {
		return joints[joints.length - 1];
	}

	/** The first joint of segments at or after a way, if it lies within a reach of it, else the way itself. */
	double jointAfter(double way, double reach) {
		for (double joint : joints) {
			if (joint >= way && joint <= way + reach) {
				return joint;
			}
		}
		return way;
	}

	/** The last joint of segments at or before a way, if it lies within a reach of it, else the way itself. */
	double jointBefore(double way, double reach) {
		double found = way;
		for (double joint : joints) {
			if (joint <= way && joint >= way - reach) {
				found = joint;
			}
		}
		return found;
	}

	Point at(double way) {
		Place place = place(way);
		return line.segments().get(place.segment).at(place.t);
	}

	private record Place(int segment, double t) {
	}

	private Place place(double way) {
		for (Chord chord : chords) {
			if (way <= chord.to && chord.length() > 0) {
				double share = Math.max(0, Math.min(1, (way - chord.from) / chord.length()));
				return new Place(chord.segment, share == 1 ? chord.t1 : chord.t0 + share * (chord.t1 - chord.t0));
			}
		}
		return new Place(line.segments().size() - 1, 1);
	}

	/** The stretch between two ways, as segments; whole ones are the very objects. */
	List<Segment> between(double from, double to) {
		Place first = place(from);
		Place last = place(to);
		List<Segment> segments = new ArrayList<>();
		for (int i = first.segment; i <= last.segment; i++) {
			double t0 = i == first.segment ? first.t : 0;
			double t1 = i == last.segment ? last.t : 1;
			Segment segment = line.segments().get(i);
			if (t0 == 0 && t1 == 1) {
				segments.add(segment);
			} else if (t0 < t1) {
				segments.add(segment.between(t0, t1));
			}
		}
		return segments;
	}
}
