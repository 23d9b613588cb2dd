package org.frisket.geometry.nodes;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Transform;

/** An outline as nodes. Places and handles are those of the outline it came from, to the last bit. */
public record NodePath(List<NodeContour> contours) {

	public static final NodePath EMPTY = new NodePath(List.of());

	public NodePath {
		contours = List.copyOf(contours);
	}

	/** Empty contours are passed over. */
	public static NodePath of(Outline outline) {
		return new NodePath(outline.contours().stream().filter(c -> !c.isEmpty()).map(NodeContour::of).toList());
	}

	/**
	 * The nodes of SVG path data; the kind of each is what its handles look like.
	 *
	 * @throws org.frisket.geometry.PathDataException if the text cannot be read
	 */
	public static NodePath parse(String pathData) {
		return of(PathData.parse(pathData));
	}

	/** The curves; a contour of a single open node has none. */
	public Outline outline() {
		return new Outline(contours.stream().map(NodeContour::contour).filter(c -> !c.isEmpty()).toList());
	}

	/**
	 * Path data that is read back as the same places and handles, exactly. What kind a node is of is not written.
	 *
	 * @throws IllegalArgumentException if a coordinate is not finite
	 */
	public String pathData() {
		return PathData.format(outline());
	}

	public boolean isEmpty() {
		return contours.isEmpty();
	}

	public int nodeCount() {
		return contours.stream().mapToInt(contour -> contour.nodes().size()).sum();
	}

	/** @throws IndexOutOfBoundsException if there is no such node */
	public PathNode node(NodeAt at) {
		return contours.get(at.contour()).nodes().get(at.node());
	}

	public boolean has(NodeAt at) {
		return at.contour() >= 0 && at.contour() < contours.size() && at.node() >= 0
				&& at.node() < contours.get(at.contour()).nodes().size();
	}

	/** @throws IndexOutOfBoundsException if there is no such segment */
	public Segment segment(SegmentAt at) {
		return contours.get(at.contour()).segment(at.segment());
	}

	/** @throws IndexOutOfBoundsException if there is no such segment */
	public NodeAt end(SegmentAt at) {
		return new NodeAt(at.contour(), contours.get(at.contour()).after(at.segment()));
	}

	/** Whether a node is one of the two ends of an open contour. */
	public boolean isEnd(NodeAt at) {
		return contours.get(at.contour()).isEnd(at.node());
	}

	/** All nodes, as the path runs. */
	public List<NodeAt> nodes() {
		List<NodeAt> all = new ArrayList<>();
		for (int contour = 0; contour < contours.size(); contour++) {
			for (int node = 0; node < contours.get(contour).nodes().size(); node++) {
				all.add(new NodeAt(contour, node));
			}
		}
		return all;
	}

	/** All segments, as the path runs. */
	public List<SegmentAt> segments() {
		List<SegmentAt> all = new ArrayList<>();
		for (int contour = 0; contour < contours.size(); contour++) {
			for (int segment = 0; segment < contours.get(contour).segmentCount(); segment++) {
				all.add(new SegmentAt(contour, segment));
			}
		}
		return all;
	}

	public NodePath transformed(Transform map) {
		return new NodePath(contours.stream().map(contour -> new NodeContour(
				contour.nodes().stream().map(node -> node.transformed(map)).toList(), contour.closed())).toList());
	}

	/** With other contours, or none, in the place of one. */
	NodePath with(int contour, NodeContour... others) {
		List<NodeContour> changed = new ArrayList<>(contours.subList(0, contour));
		changed.addAll(List.of(others));
		changed.addAll(contours.subList(contour + 1, contours.size()));
		return new NodePath(changed);
	}

	NodePath with(NodeAt at, PathNode node) {
		return with(at.contour(), contours.get(at.contour()).with(at.node(), node));
	}
}
