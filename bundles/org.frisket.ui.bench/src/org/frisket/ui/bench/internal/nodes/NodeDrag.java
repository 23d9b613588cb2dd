package org.frisket.ui.bench.internal.nodes;

import java.util.List;

import org.frisket.editing.shapes.ChangePath;
import org.frisket.geometry.Point;
import org.frisket.geometry.nodes.HandleAt;
import org.frisket.geometry.nodes.NearestOnPath;
import org.frisket.geometry.nodes.NodeAt;
import org.frisket.geometry.nodes.NodeMoves;
import org.frisket.geometry.nodes.NodePath;
import org.frisket.geometry.nodes.NodeSelection;
import org.frisket.model.Outline;
import org.frisket.ui.LengthText;

/** What is dragged in a path. Places of the pointer are in mm of the job. */
sealed interface NodeDrag {

	/** The place meant, from the place of the button's press and the place of the pointer. */
	Point goal(Point pressed, Point pointer, boolean shift, PointerPlace place);

	/** The nodes that lie still, or that the drag is not about: it may be held by them. In the own frame. */
	List<Point> others();

	/** The path in its own frame with what is dragged at its goal. */
	NodePath path(Point goal, boolean alone);

	/** What is written beside the pointer. */
	String measure(Point goal);

	/** The change that makes the path stay so. */
	ChangePath edit(Outline outline, String pathData);

	private static List<Point> without(NodePath path, List<NodeAt> dragged) {
		return path.nodes().stream().filter(at -> !dragged.contains(at)).map(at -> path.node(at).place()).toList();
	}

	/** Selected nodes, held by one of them. Shift keeps to one direction. */
	record Nodes(PathFrame frame, NodePath path, NodeSelection selection, NodeAt held) implements NodeDrag {

		private Point start() {
			return frame.toJob(path.node(held).place());
		}

		@Override
		public Point goal(Point pressed, Point pointer, boolean shift, PointerPlace place) {
			Point start = start();
			Point by = pointer.minus(pressed);
			boolean across = Math.abs(by.x()) >= Math.abs(by.y());
			Point goal = start.plus(by);
			return !shift ? place.meant(goal) : across ? place.across(goal, start.y()) : place.down(goal, start.x());
		}

		@Override
		public List<Point> others() {
			return NodeDrag.without(path, selection.nodes());
		}

		@Override
		public NodePath path(Point goal, boolean alone) {
			return NodeMoves.nodes(path, selection.nodes(), frame.toOwn(goal).minus(path.node(held).place()));
		}

		@Override
		public String measure(Point goal) {
			Point by = goal.minus(start());
			return selection.size() == 1 ? LengthText.place(goal.x(), goal.y()) : LengthText.place(by.x(), by.y());
		}

		@Override
		public ChangePath edit(Outline outline, String pathData) {
			return ChangePath.nodes(ChangePath.Change.MOVE, selection.size(), outline, pathData);
		}
	}

	/** A handle. Shift keeps to eighths of a turn; moved alone, it leaves the opposite one. */
	record Handle(PathFrame frame, NodePath path, HandleAt handle) implements NodeDrag {

		@Override
		public Point goal(Point pressed, Point pointer, boolean shift, PointerPlace place) {
			Point from = frame.toJob(path.node(handle.node()).place());
			return shift ? place.stepped(from, pointer) : place.meant(pointer);
		}

		@Override
		public List<Point> others() {
			return NodeDrag.without(path, List.of(handle.node()));
		}

		@Override
		public NodePath path(Point goal, boolean alone) {
			return NodeMoves.handle(path, handle, frame.toOwn(goal), alone);
		}

		@Override
		public String measure(Point goal) {
			return LengthText.place(goal.x(), goal.y());
		}

		@Override
		public ChangePath edit(Outline outline, String pathData) {
			return ChangePath.handle(outline, pathData);
		}
	}

	/** A segment, held by one of its points: a curve bends, a line goes along with both nodes. */
	record Segment(PathFrame frame, NodePath path, NearestOnPath held) implements NodeDrag {

		private static final double END = 1e-3;

		@Override
		public Point goal(Point pressed, Point pointer, boolean shift, PointerPlace place) {
			return place.meant(frame.toJob(held.place()).plus(pointer.minus(pressed)));
		}

		@Override
		public List<Point> others() {
			return NodeDrag.without(path, ends().nodes());
		}

		@Override
		public NodePath path(Point goal, boolean alone) {
			double t = Math.min(1 - END, Math.max(END, held.t()));
			return NodeMoves.segment(path, held.segment(), t, frame.toOwn(goal));
		}

		@Override
		public String measure(Point goal) {
			return LengthText.place(goal.x(), goal.y());
		}

		@Override
		public ChangePath edit(Outline outline, String pathData) {
			return ChangePath.segment(outline, pathData);
		}

		/** Both nodes at its ends. */
		NodeSelection ends() {
			return new NodeSelection(List.of(held.segment().start(), path.end(held.segment())));
		}
	}
}
