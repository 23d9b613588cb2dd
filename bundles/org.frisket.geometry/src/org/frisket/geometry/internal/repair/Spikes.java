package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.repair.Mend;

/** Needles of two straight sides that run back within a width of each other. */
final class Spikes {

	/** A pointed star is no needle: sides that stand further apart than this, as a sine, are left. */
	private static final double SHARP = 0.1;
	private static final int CORNERS = 3;

	private Spikes() {
	}

	/** The closed contour without its spikes, whose sides are taken; itself if it has none. */
	static Contour cut(Contour contour, double width, List<Mend> mends, List<Contour> taken) {
		List<Segment> segments = new ArrayList<>(contour.segments());
		boolean changed = false;
		for (int i = 0; i < segments.size() && segments.size() > CORNERS; i++) {
			int next = (i + 1) % segments.size();
			if (isSpike(segments.get(i), segments.get(next), width)) {
				Point apex = segments.get(i).end();
				taken.add(Contour.open(List.of(segments.get(i), segments.get(next))));
				double depth = cutOff(segments, i, next);
				mends.add(new Mend("spike-removed", apex, depth, "mm"));
				changed = true;
				// the new side may make a spike with the one before
				i = -1;
			}
		}
		return changed ? Contour.closed(segments) : contour;
	}

	private static boolean isSpike(Segment in, Segment out, double width) {
		if (!(in instanceof Line) || !(out instanceof Line)) {
			return false;
		}
		Point back = in.endTangent().times(-1);
		double shorter = Math.min(in.length(), out.length());
		double sine = Math.abs(back.cross(out.startTangent()));
		return back.dot(out.startTangent()) > 0 && sine < SHARP && sine * shorter <= width;
	}

	/** The shorter side goes; a line from its far end takes the place of the longer one. */
	private static double cutOff(List<Segment> segments, int in, int out) {
		Segment before = segments.get(in);
		Segment after = segments.get(out);
		double depth = Math.min(before.length(), after.length());
		if (before.length() <= after.length()) {
			segments.set(in, new Line(before.start(), after.end()));
			segments.remove(out);
		} else {
			segments.set(out, new Line(before.start(), after.end()));
			segments.remove(in);
		}
		return depth;
	}
}
