package org.frisket.geometry.nodes;

/** Which segment of a path: it begins at the node of the same number. Ordered as the path runs. */
public record SegmentAt(int contour, int segment) implements Comparable<SegmentAt> {

	/** The node at which it begins. */
	public NodeAt start() {
		return new NodeAt(contour, segment);
	}

	@Override
	public int compareTo(SegmentAt other) {
		return start().compareTo(other.start());
	}
}
