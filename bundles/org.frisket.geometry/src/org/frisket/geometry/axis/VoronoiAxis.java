package org.frisket.geometry.axis;

import java.util.HashMap;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Triangle;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;
import org.locationtech.jts.triangulate.quadedge.QuadEdge;
import org.locationtech.jts.triangulate.quadedge.QuadEdgeSubdivision;

/**
 * The edges of the Voronoi diagram of boundary samples that stay inside a shape and part samples that are no
 * neighbours: with closer samples they come ever nearer to the medial axis (Brandt and Algazi 1992).
 */
final class VoronoiAxis {

	private final BoundarySamples samples;
	private final IndexedPointInAreaLocator inside;
	private final AxisGraph graph = new AxisGraph();
	/** The node in the middle of the triangle to the left of an edge. */
	private final Map<QuadEdge, Integer> nodeOf = new HashMap<>();

	private VoronoiAxis(Piece piece, double spacing) {
		samples = new BoundarySamples(piece, spacing);
		inside = new IndexedPointInAreaLocator(samples.polygon());
	}

	/** @param spacing the largest distance of samples in mm; finer than an eighth of the thinnest stroke serves */
	static AxisGraph of(Piece piece, double spacing, Monitor monitor) {
		VoronoiAxis axis = new VoronoiAxis(piece, spacing);
		axis.build(monitor);
		return axis.graph;
	}

	private void build(Monitor monitor) {
		DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
		builder.setSites(samples.all());
		monitor.check();
		QuadEdgeSubdivision triangles = builder.getSubdivision();
		monitor.check();
		triangles.visitTriangles(this::addNode, false);
		monitor.check();
		for (Object edge : triangles.getPrimaryEdges(false)) {
			connect((QuadEdge) edge);
		}
	}

	private void addNode(QuadEdge[] triangle) {
		Coordinate a = triangle[0].orig().getCoordinate();
		Coordinate centre = Triangle.circumcentreDD(a, triangle[1].orig().getCoordinate(),
				triangle[2].orig().getCoordinate());
		if (inside.locate(centre) == Location.INTERIOR) {
			int node = graph.add(new AxisPoint(new Point(centre.x, centre.y), centre.distance(a)));
			for (QuadEdge edge : triangle) {
				nodeOf.put(edge, node);
			}
		}
	}

	private void connect(QuadEdge edge) {
		Integer left = nodeOf.get(edge);
		Integer right = nodeOf.get(edge.sym());
		Coordinate a = edge.orig().getCoordinate();
		Coordinate b = edge.dest().getCoordinate();
		if (left != null && right != null && !samples.areNeighbours(a, b)) {
			double radius = Math.min(graph.node(left).radius(), graph.node(right).radius());
			graph.connect(left, right, 2 * Math.asin(Math.min(1, a.distance(b) / (2 * radius))));
		}
	}
}
