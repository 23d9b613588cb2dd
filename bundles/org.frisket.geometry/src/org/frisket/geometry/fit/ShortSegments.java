package org.frisket.geometry.fit;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** Takes segments below a length out of a fitted contour, as long as it keeps an inside. */
public final class ShortSegments {

	private final double shortest;

	public ShortSegments(double shortest) {
		this.shortest = shortest;
	}

	public Contour removedFrom(Contour contour) {
		List<Segment> segments = new ArrayList<>(contour.segments());
		int index = 0;
		while (index < segments.size()) {
			if (isShort(segments.get(index)) && keepsAnInside(segments)) {
				remove(segments, index);
				index = Math.max(0, index - 1);
			} else {
				index++;
			}
		}
		return segments.size() == contour.segments().size() ? contour : Contour.closed(segments);
	}

	private boolean isShort(Segment segment) {
		return segment.start().distance(segment.end()) < shortest && segment.length() < shortest;
	}

	private static boolean keepsAnInside(List<Segment> segments) {
		return segments.size() > 3 || segments.size() == 3 && segments.stream().allMatch(Cubic.class::isInstance);
	}

	private void remove(List<Segment> segments, int index) {
		Segment gone = segments.get(index);
		int before = (index + segments.size() - 1) % segments.size();
		int after = (index + 1) % segments.size();
		Point node = StepMending.meeting(gone.start(), segments.get(before).endTangent(), gone.end(),
				segments.get(after).startTangent(), shortest / 2);
		segments.set(before, segments.get(before).withEnds(segments.get(before).start(), node));
		segments.set(after, segments.get(after).withEnds(node, segments.get(after).end()));
		segments.remove(index);
	}
}
