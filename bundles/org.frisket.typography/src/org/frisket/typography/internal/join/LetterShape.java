package org.frisket.typography.internal.join;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;

/**
 * A letter as the joiner sees it: its body, by which it is joined, and marks such as dots and accents, which only go
 * along. The body is the largest part, every other one that stands beside it, and so on; what lies wholly or for the
 * most part above or below the body is a mark.
 */
public final class LetterShape {

	private final Profile body;
	private final List<Profile> marks;
	private final double area;

	private LetterShape(Profile body, List<Profile> marks, double area) {
		this.body = body;
		this.marks = marks;
		this.area = area;
	}

	private record Part(List<Polygon> polygons, double area, double top, double bottom) {

		/** Whether they share more than half the height of the lower one. */
		boolean standsBeside(Part other) {
			double common = Math.min(bottom, other.bottom) - Math.max(top, other.top);
			return common > Math.min(bottom - top, other.bottom - other.top) / 2;
		}
	}

	/** With the origin at 0. @param deviation of the flattened outline from the true one, in mm */
	public static LetterShape of(LetterKey letter, double deviation) {
		return of(letter.outline(), deviation);
	}

	/** @param deviation of the flattened outline from the true one, in mm */
	public static LetterShape of(Outline outline, double deviation) {
		List<Part> parts = parts(outline, deviation);
		List<Part> body = body(parts);
		List<Polygon> bodyPolygons = body.stream().flatMap(p -> p.polygons().stream()).toList();
		List<Profile> marks = parts.stream().filter(p -> !body.contains(p)).map(p -> new Profile(p.polygons()))
				.toList();
		return new LetterShape(new Profile(bodyPolygons), marks, body.stream().mapToDouble(Part::area).sum());
	}

	/** A letter all of whose parts are to be met, marks too. */
	public static LetterShape whole(Outline outline, double deviation) {
		List<Part> parts = parts(outline, deviation);
		return new LetterShape(new Profile(parts.stream().flatMap(p -> p.polygons().stream()).toList()), List.of(),
				parts.stream().mapToDouble(Part::area).sum());
	}

	private static List<Part> body(List<Part> parts) {
		Part largest = parts.get(0);
		for (Part part : parts) {
			if (part.area() > largest.area()) {
				largest = part;
			}
		}
		List<Part> body = new ArrayList<>(List.of(largest));
		for (int i = 0; i < body.size(); i++) {
			for (Part part : parts) {
				if (!body.contains(part) && part.standsBeside(body.get(i))) {
					body.add(part);
				}
			}
		}
		return body;
	}

	private static List<Part> parts(Outline outline, double deviation) {
		List<List<Polygon>> groups = new ArrayList<>();
		List<Contour> contours = outline.contours().stream().filter(c -> !c.isEmpty()).toList();
		for (Contour contour : contours) {
			Polygon polygon = new Polygon(contour, deviation);
			List<Polygon> merged = new ArrayList<>();
			for (List<Polygon> group : List.copyOf(groups)) {
				if (group.stream().anyMatch(polygon::isOneWith)) {
					merged.addAll(group);
					groups.remove(group);
				}
			}
			merged.add(polygon);
			groups.add(merged);
		}
		return groups.stream().map(LetterShape::part).toList();
	}

	private static Part part(List<Polygon> polygons) {
		double area = 0;
		double top = Double.POSITIVE_INFINITY;
		double bottom = Double.NEGATIVE_INFINITY;
		for (Polygon p : polygons) {
			for (int i = 0, j = p.x.length - 1; i < p.x.length; j = i++) {
				area += (p.x[j] * p.y[i] - p.x[i] * p.y[j]) / 2;
			}
			top = Math.min(top, p.bounds.minY());
			bottom = Math.max(bottom, p.bounds.maxY());
		}
		return new Part(polygons, Math.abs(area), top, bottom);
	}

	Profile body() {
		return body;
	}

	/** Area of the body in mm², overlaps counted as often as they are covered. */
	public double area() {
		return area;
	}

	public boolean hasMarks() {
		return !marks.isEmpty();
	}

	/** Whether each mark overlaps one of the other letters' bodies, each of them moved by its offset. */
	public boolean marksTouch(List<LetterShape> others, double[] offsets) {
		for (Profile mark : marks) {
			boolean held = false;
			for (int i = 0; i < offsets.length && !held; i++) {
				held = Approach.overlap(mark, others.get(i).body, offsets[i]);
			}
			if (!held) {
				return false;
			}
		}
		return true;
	}
}
