package org.frisket.export.dxf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.export.machine.Digits;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Tracks;

/**
 * Contours as polylines, whose arcs are told by bulges: the tangent of a quarter of the angle, counter-clockwise positive.
 */
final class Entities {

	private static final int BULGE_DECIMALS = 8;
	/** In mm. */
	private static final double SHORTEST = 1e-6;

	/** @param bulge on the way to the next one */
	private record Vertex(String x, String y, double bulge) {
	}

	/** A move to a place. */
	private record Step(Point end, double bulge) {
	}

	private final Groups out;
	private final double tolerance;
	private final Transform toPage;
	/** A sheet holds many copies of few shapes. */
	private final Map<Contour, List<Step>> stepsByModel = new IdentityHashMap<>();

	/**
	 * @param tolerance in mm: how far arcs may be from curves
	 * @param toPage    from mm, y downwards, to the unit of the drawing, y upwards
	 */
	Entities(Groups out, double tolerance, Transform toPage) {
		this.out = out;
		this.tolerance = tolerance;
		this.toPage = toPage;
	}

	/**
	 * @param own     line type, where it is not that of the layer; else null
	 * @param contour in mm, y downwards
	 */
	void add(String layer, LineType own, Contour contour) throws IOException {
		if (contour.isEmpty()) {
			return;
		}
		boolean closed = contour.isClosed();
		List<Vertex> vertices = vertices(contour);
		if (vertices.size() == 1) {
			begin("POINT", layer, own).put(10, vertices.get(0).x()).put(20, vertices.get(0).y());
		} else if (vertices.size() == 2 && !closed && vertices.get(0).bulge() == 0) {
			begin("LINE", layer, own).put(10, vertices.get(0).x()).put(20, vertices.get(0).y()).put(11, vertices.get(1).x())
					.put(21, vertices.get(1).y());
		} else {
			polyline(layer, own, vertices, closed);
		}
	}

	private Groups begin(String entity, String layer, LineType own) throws IOException {
		out.put(0, entity).put(8, layer);
		return own == null ? out : out.put(6, own.name());
	}

	private void polyline(String layer, LineType own, List<Vertex> vertices, boolean closed) throws IOException {
		begin("POLYLINE", layer, own).put(66, 1).place(10, 0, 0).put(30, 0.0).put(70, closed ? 1 : 0);
		for (Vertex vertex : vertices) {
			out.put(0, "VERTEX").put(8, layer).put(10, vertex.x()).put(20, vertex.y());
			if (vertex.bulge() != 0) {
				out.put(42, Digits.of(vertex.bulge(), BULGE_DECIMALS));
			}
		}
		out.put(0, "SEQEND").put(8, layer);
	}

	/** None of two neighbours is the same place in the file; one alone if all of it is. */
	private List<Vertex> vertices(Contour contour) {
		List<Vertex> vertices = new ArrayList<>();
		Transform place = Transform.translation(contour.offset().x(), contour.offset().y()).then(toPage);
		Point start = toPage.apply(contour.start());
		String x = out.length(start.x());
		String y = out.length(start.y());
		for (Step step : stepsByModel.computeIfAbsent(contour.model(), this::steps)) {
			Point end = place.apply(step.end());
			String nextX = out.length(end.x());
			String nextY = out.length(end.y());
			if (!nextX.equals(x) || !nextY.equals(y)) {
				vertices.add(new Vertex(x, y, step.bulge()));
				x = nextX;
				y = nextY;
			}
		}
		boolean back = contour.isClosed() && !vertices.isEmpty() && vertices.get(0).x().equals(x)
				&& vertices.get(0).y().equals(y);
		if (!back) {
			vertices.add(new Vertex(x, y, 0));
		}
		return vertices;
	}

	private List<Step> steps(Contour contour) {
		if (isDot(contour)) {
			return List.of();
		}
		// with y turned upwards, what grew clockwise to the viewer is negative
		return Tracks.arcs(contour, tolerance).moves().stream()
				.map(move -> new Step(move.end(), move instanceof Arc arc ? -Math.tan(arc.sweep() / 4) : 0)).toList();
	}

	/** Shorter than any track can be. */
	private static boolean isDot(Contour contour) {
		return contour.segments().stream().noneMatch(segment -> segment.start().distance(segment.end()) > SHORTEST)
				&& !(contour.length() > SHORTEST);
	}
}
