package org.frisket.geometry.axis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Parts strokes at chosen places, at nodes of their own that are told by a number below zero. */
final class Parting {

	private final Set<AxisPoint> places;
	private final Degrees degrees;
	private final Map<AxisPoint, Integer> nodes = new HashMap<>();

	Parting(Set<AxisPoint> places, Degrees degrees) {
		this.places = places;
		this.degrees = degrees;
	}

	static boolean isParting(int node) {
		return node < 0;
	}

	List<Stroke> parted(List<Stroke> strokes) {
		List<Stroke> parts = new ArrayList<>();
		for (Stroke stroke : strokes) {
			part(stroke.from() == stroke.to() && degrees.of(stroke.from()) == 2 ? turned(stroke) : stroke, parts);
		}
		return parts;
	}

	/** A ring that meets no other stroke, beginning at the first place where it is parted. */
	private Stroke turned(Stroke ring) {
		List<AxisPoint> points = new ArrayList<>(ring.points().subList(1, ring.points().size()));
		for (int i = 0; i < points.size(); i++) {
			if (places.contains(points.get(i))) {
				int node = node(points.get(i));
				Collections.rotate(points, -i);
				points.add(points.get(0));
				return new Stroke(node, node, points);
			}
		}
		return ring;
	}

	private void part(Stroke stroke, List<Stroke> parts) {
		int from = stroke.from();
		int start = 0;
		for (int i = 1; i < stroke.points().size() - 1; i++) {
			AxisPoint point = stroke.points().get(i);
			if (places.contains(point)) {
				parts.add(new Stroke(from, node(point), stroke.points().subList(start, i + 1)));
				from = node(point);
				start = i;
			}
		}
		parts.add(new Stroke(from, stroke.to(), stroke.points().subList(start, stroke.points().size())));
	}

	private int node(AxisPoint point) {
		return nodes.computeIfAbsent(point, p -> -1 - nodes.size());
	}
}
