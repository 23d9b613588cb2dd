package org.frisket.geometry.nodes;

/** Which node of a path: both counted from 0. Ordered as the path runs. */
public record NodeAt(int contour, int node) implements Comparable<NodeAt> {

	@Override
	public int compareTo(NodeAt other) {
		return contour != other.contour ? Integer.compare(contour, other.contour) : Integer.compare(node, other.node);
	}
}
