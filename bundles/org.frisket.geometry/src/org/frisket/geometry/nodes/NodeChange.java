package org.frisket.geometry.nodes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** What can be done to the selected nodes of a path, and to the segments between them. */
public enum NodeChange {

	/** A node in the middle of each segment between selected nodes, or else of the one after the only selected node. */
	ADD {
		@Override
		Outcome change(NodePath path, NodeSelection selection) {
			List<SegmentAt> segments = new ArrayList<>(selection.segments(path));
			if (segments.isEmpty() && selection.size() == 1) {
				NodeAt node = selection.nodes().get(0);
				path.segments().stream().filter(at -> at.start().equals(node)).forEach(segments::add);
			}
			// from the end, so that the numbers of those before stay
			Collections.reverse(segments);
			NodePath changed = path;
			for (SegmentAt at : segments) {
				changed = NodeCount.insert(changed, at, HALF).path();
			}
			List<NodeAt> added = new ArrayList<>();
			for (SegmentAt at : segments) {
				int before = (int) segments.stream().filter(other -> other.contour() == at.contour()
						&& other.segment() < at.segment()).count();
				added.add(new NodeAt(at.contour(), at.segment() + 1 + before));
			}
			return new Outcome(changed, new NodeSelection(added), added.size());
		}
	},

	DELETE {
		@Override
		Outcome change(NodePath path, NodeSelection selection) {
			return new Outcome(NodeCount.delete(path, selection.nodes()), NodeSelection.NONE, selection.size());
		}
	},

	CORNER {
		@Override
		Outcome change(NodePath path, NodeSelection selection) {
			return kinds(path, selection, NodeKind.CORNER);
		}
	},

	SMOOTH {
		@Override
		Outcome change(NodePath path, NodeSelection selection) {
			return kinds(path, selection, NodeKind.SMOOTH);
		}
	},

	SYMMETRIC {
		@Override
		Outcome change(NodePath path, NodeSelection selection) {
			return kinds(path, selection, NodeKind.SYMMETRIC);
		}
	},

	/** Makes the segments between selected nodes straight. */
	LINE {
		@Override
		Outcome change(NodePath path, NodeSelection selection) {
			List<SegmentAt> segments = selection.segments(path);
			return new Outcome(NodeShapes.lines(path, segments), selection, segments.size());
		}
	},

	/** Makes the segments between selected nodes curves. */
	CURVE {
		@Override
		Outcome change(NodePath path, NodeSelection selection) {
			List<SegmentAt> segments = selection.segments(path);
			return new Outcome(NodeShapes.curves(path, segments), selection, segments.size());
		}
	},

	/** Breaks the path at the only selected node. */
	BREAK {
		@Override
		Outcome change(NodePath path, NodeSelection selection) {
			return selection.size() != 1 ? new Outcome(path, selection, 0)
					: new Outcome(ContourChanges.breakAt(path, selection.nodes().get(0)), NodeSelection.NONE, 1);
		}
	},

	/** Joins the two selected ends. */
	JOIN {
		@Override
		Outcome change(NodePath path, NodeSelection selection) {
			if (selection.size() != 2 || !selection.nodes().stream().allMatch(path::isEnd)) {
				return new Outcome(path, selection, 0);
			}
			NodeAt first = selection.nodes().get(0);
			NodeAt second = selection.nodes().get(1);
			return new Outcome(ContourChanges.join(path, first, second, MEETING), NodeSelection.NONE, 2);
		}
	},

	/** Closes the open contours in which nodes are selected. */
	CLOSE {
		@Override
		Outcome change(NodePath path, NodeSelection selection) {
			NodePath changed = path;
			for (int contour : selection.contours()) {
				changed = ContourChanges.close(changed, contour, MEETING);
			}
			return new Outcome(changed, selection.kept(path, changed), selection.contours().size());
		}
	},

	/** Lets the contours in which nodes are selected run the other way. */
	REVERSE {
		@Override
		Outcome change(NodePath path, NodeSelection selection) {
			NodePath changed = path;
			List<NodeAt> turned = new ArrayList<>();
			for (int contour : selection.contours()) {
				changed = ContourChanges.reverse(changed, contour);
				int count = path.contours().get(contour).nodes().size();
				int last = path.contours().get(contour).closed() ? count : count - 1;
				selection.nodes().stream().filter(at -> at.contour() == contour)
						.forEach(at -> turned.add(new NodeAt(contour, (last - at.node()) % count)));
			}
			return new Outcome(changed, new NodeSelection(turned), selection.contours().size());
		}
	};

	private static final double HALF = 0.5;
	/** Ends that are no farther apart, in mm, are meant to meet. */
	private static final double MEETING = 0.05;

	/**
	 * What came of a change.
	 *
	 * @param selection in the new path
	 * @param count     how many nodes, segments or contours it was done to
	 */
	public record Outcome(NodePath path, NodeSelection selection, int count) {
	}

	abstract Outcome change(NodePath path, NodeSelection selection);

	/** Makes the change; empty if it changes nothing. */
	public Optional<Outcome> on(NodePath path, NodeSelection selection) {
		Outcome outcome = change(path, selection);
		return outcome.path().equals(path) ? Optional.empty() : Optional.of(outcome);
	}

	private static Outcome kinds(NodePath path, NodeSelection selection, NodeKind kind) {
		return new Outcome(NodeShapes.kind(path, selection.nodes(), kind), selection, selection.size());
	}
}
