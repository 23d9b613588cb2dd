package org.frisket.ui.bench.internal.nodes;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

import org.frisket.geometry.Point;
import org.frisket.geometry.nodes.HandleAt;
import org.frisket.geometry.nodes.NearestOnPath;
import org.frisket.geometry.nodes.NodeAt;
import org.frisket.geometry.nodes.NodePath;
import org.frisket.geometry.nodes.NodeSelection;
import org.frisket.geometry.nodes.PathNode;
import org.frisket.geometry.nodes.Side;

/** What of a path can be taken hold of at a place: handles of selected nodes, nodes, segments. */
record NodePick(PathFrame frame, NodePath path, NodeSelection selection) {

	private static final int REACH_PX = 7;

	/** What lies at a place in mm of the job, the handles of selected nodes first; null for nothing. */
	NodeDrag at(Point place) {
		NodePath shown = path.transformed(frame.toJob());
		double reach = REACH_PX / frame.zoom().pixelsPerMm();
		Optional<HandleAt> handle = handle(shown, place, reach);
		Optional<NodeAt> node = NearestOnPath.node(shown, place, reach);
		if (handle.isPresent() && (node.isEmpty()
				|| away(shown, handle.get(), place) < shown.node(node.get()).place().distance(place))) {
			return new NodeDrag.Handle(frame, path, handle.get());
		}
		if (node.isPresent()) {
			return new NodeDrag.Nodes(frame, path, selection, node.get());
		}
		return NearestOnPath.of(shown, place).filter(near -> near.distance() <= reach)
				.map(near -> new NodeDrag.Segment(frame, path, new NearestOnPath(near.segment(), near.t(),
						path.segment(near.segment()).at(near.t()), near.distance())))
				.orElse(null);
	}

	private Optional<HandleAt> handle(NodePath shown, Point place, double reach) {
		return selection.nodes().stream()
				.flatMap(node -> Stream.of(new HandleAt(node, Side.IN), new HandleAt(node, Side.OUT)))
				.filter(handle -> isSeen(shown.node(handle.node()), handle.side()))
				.filter(handle -> away(shown, handle, place) <= reach)
				.min(Comparator.comparingDouble(handle -> away(shown, handle, place)));
	}

	private static boolean isSeen(PathNode node, Side side) {
		return node.handle(side) != null && !node.handle(side).equals(node.place());
	}

	private static double away(NodePath shown, HandleAt handle, Point place) {
		return shown.node(handle.node()).handle(handle.side()).distance(place);
	}
}
