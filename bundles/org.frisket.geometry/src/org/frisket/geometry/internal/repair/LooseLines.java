package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairStep;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.kdtree.KdNode;
import org.locationtech.jts.index.kdtree.KdTree;

/**
 * Chains lines whose ends lie within twice the tolerance: both ends come to the middle. Where several meet, those that
 * go on straightest are joined first. A line that meets itself is left to the closing of contours.
 */
public final class LooseLines implements RepairStep {

	/** Ends closer than this part of the reach count as one place, where only the direction decides. */
	private static final double SAME_PLACE = 0.05;

	@Override
	public List<Option> options() {
		return List.of();
	}

	@Override
	public Moves moves(OptionValues options) {
		return Moves.ENDS;
	}

	/** Ends are numbered: twice the index of the line, one more for its last point. */
	private record Joint(int one, int other, double gap, boolean near, double turn) {

		static final Comparator<Joint> BEST_FIRST = Comparator.comparing((Joint j) -> !j.near)
				.thenComparingDouble(Joint::turn).thenComparingDouble(Joint::gap).thenComparingInt(Joint::one)
				.thenComparingInt(Joint::other);
	}

	@Override
	public Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor) {
		List<Contour> open = artwork.openLines();
		int[] mates = mates(open, 2 * tolerance.mm(), monitor);
		List<Contour> lines = new ArrayList<>(artwork.lines().stream().filter(Contour::isClosed).toList());
		List<Mend> mends = new ArrayList<>();
		boolean[] used = new boolean[open.size()];
		// chains from their loose ends first; what is left then goes round
		for (int end = 0; end < mates.length; end++) {
			if (mates[end] < 0 && !used[end / 2]) {
				lines.add(Contour.open(chain(open, mates, end, used, mends)));
			}
		}
		for (int i = 0; i < used.length; i++) {
			if (!used[i]) {
				lines.add(Contour.closed(chain(open, mates, 2 * i, used, mends)));
			}
		}
		lines.removeIf(Contour::isEmpty);
		return new Mended(artwork.withLines(lines), mends);
	}

	private static int[] mates(List<Contour> open, double reach, Monitor monitor) {
		KdTree tree = new KdTree();
		for (int end = 0; end < 2 * open.size(); end++) {
			Point point = point(open, end);
			KdNode node = tree.insert(new Coordinate(point.x(), point.y()), new ArrayList<Integer>());
			ends(node).add(end);
		}
		List<Joint> joints = new ArrayList<>();
		for (int end = 0; end < 2 * open.size(); end++) {
			monitor.check();
			Point point = point(open, end);
			Envelope around = new Envelope(point.x() - reach, point.x() + reach, point.y() - reach, point.y() + reach);
			for (Object node : tree.query(around)) {
				for (int other : ends((KdNode) node)) {
					double gap = point.distance(point(open, other));
					if (other > end && gap <= reach && !meetsItself(open, end, other, gap)) {
						joints.add(new Joint(end, other, gap, gap <= SAME_PLACE * reach, turn(open, end, other)));
					}
				}
			}
		}
		joints.sort(Joint.BEST_FIRST);
		int[] mates = new int[2 * open.size()];
		java.util.Arrays.fill(mates, -1);
		boolean[] taken = new boolean[mates.length];
		for (Joint joint : joints) {
			if (!taken[joint.one] && !taken[joint.other]) {
				taken[joint.one] = true;
				taken[joint.other] = true;
				if (joint.one / 2 != joint.other / 2) {
					mates[joint.one] = joint.other;
					mates[joint.other] = joint.one;
				}
			}
		}
		return mates;
	}

	@SuppressWarnings("unchecked")
	private static List<Integer> ends(KdNode node) {
		return (List<Integer>) node.getData();
	}

	/** A line hardly longer than the gap between its ends is no loop. */
	private static boolean meetsItself(List<Contour> open, int one, int other, double gap) {
		return one / 2 == other / 2 && open.get(one / 2).length() <= 2 * gap;
	}

	private static Point point(List<Contour> open, int end) {
		return end % 2 == 0 ? open.get(end / 2).start() : open.get(end / 2).end();
	}

	/** How far the way bends from one end over to the other: 0 straight on, 2 back. */
	private static double turn(List<Contour> open, int one, int other) {
		return 1 + outwards(open, one).dot(outwards(open, other));
	}

	private static Point outwards(List<Contour> open, int end) {
		List<Segment> segments = open.get(end / 2).segments();
		return end % 2 == 0 ? segments.get(0).startTangent().times(-1)
				: segments.get(segments.size() - 1).endTangent();
	}

	/** The segments from one end on, over all joints. */
	private static List<Segment> chain(List<Contour> open, int[] mates, int from, boolean[] used, List<Mend> mends) {
		List<Segment> segments = new ArrayList<>();
		int end = from;
		while (end >= 0 && !used[end / 2]) {
			used[end / 2] = true;
			Contour line = end % 2 == 0 ? open.get(end / 2) : open.get(end / 2).reversed();
			int far = end ^ 1;
			segments.addAll(Ends.moved(line, place(open, mates, end), place(open, mates, far)));
			end = mates[far];
			if (end >= 0) {
				mends.add(new Mend("ends-joined", place(open, mates, far), point(open, far).distance(point(open, end)),
						"mm"));
			}
		}
		return segments;
	}

	/** Where an end comes to lie. */
	private static Point place(List<Contour> open, int[] mates, int end) {
		int mate = mates[end];
		if (mate < 0) {
			return point(open, end);
		}
		// the same to the last bit from both sides
		return point(open, Math.min(end, mate)).towards(point(open, Math.max(end, mate)), 0.5);
	}
}
