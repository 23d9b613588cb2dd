package org.frisket.geometry.clean;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/**
 * The map that edges draw in the plane: at each node the half-edges that leave it, in the order of their angles, and
 * on the left of each half-edge the winding of the face there. Half-edge 2e runs along edge e, half-edge 2e + 1
 * against it. Left, right and angles are those of a plane whose y points up.
 */
final class Arrangement {

	private static final int UNKNOWN = Integer.MIN_VALUE;
	private static final int MONITOR_STEP = 1024;

	final List<Edge> edges;
	/** Half-edges that leave each node, counter-clockwise. */
	final int[][] leaving;
	/** Where in {@link #leaving} a half-edge stands. */
	final int[] rank;
	private final int[] left;
	private final int[] component;
	private final Coordinate[] corner;
	/** What is still to be looked at: nodes, or half-edges, each of them once. */
	private final int[] open;
	private int openCount;
	private boolean consistent = true;

	Arrangement(List<Edge> edges, int nodeCount, Monitor monitor) {
		this.edges = edges;
		this.leaving = new int[nodeCount][];
		this.rank = new int[2 * edges.size()];
		this.left = new int[2 * edges.size()];
		this.component = new int[nodeCount];
		this.corner = new Coordinate[2 * edges.size()];
		this.open = new int[Math.max(nodeCount, 2 * edges.size())];
		collect(nodeCount);
		for (int node = 0; node < nodeCount; node++) {
			poll(node, monitor);
			sort(leaving[node]);
		}
		if (consistent) {
			label(monitor);
		}
	}

	/** False if the edges cross somewhere between their nodes, so that no winding fits. */
	boolean isConsistent() {
		return consistent;
	}

	static int twin(int half) {
		return half ^ 1;
	}

	Edge edge(int half) {
		return edges.get(half >> 1);
	}

	static boolean along(int half) {
		return (half & 1) == 0;
	}

	Node origin(int half) {
		return along(half) ? edge(half).start : edge(half).end;
	}

	int left(int half) {
		return left[half];
	}

	int right(int half) {
		return left[twin(half)];
	}

	/** Second corner of a half-edge, which gives its direction at the origin. */
	Coordinate corner(int half) {
		if (corner[half] == null) {
			corner[half] = edge(half).cornerAfter(along(half));
		}
		return corner[half];
	}

	private int winding(int half) {
		return along(half) ? edge(half).winding : -edge(half).winding;
	}

	private void collect(int nodeCount) {
		int[] count = new int[nodeCount];
		for (Edge edge : edges) {
			count[edge.start.id]++;
			count[edge.end.id]++;
		}
		for (int i = 0; i < nodeCount; i++) {
			leaving[i] = new int[count[i]];
		}
		for (int half = 2 * edges.size() - 1; half >= 0; half--) {
			int node = origin(half).id;
			leaving[node][--count[node]] = half;
		}
	}

	/** Insertion sort: stars are small. */
	private void sort(int[] star) {
		for (int i = 1; star.length > 2 && i < star.length; i++) {
			int half = star[i];
			int j = i - 1;
			while (j >= 0 && compare(star[j], half) > 0) {
				star[j + 1] = star[j];
				j--;
			}
			star[j + 1] = half;
		}
		for (int i = 0; i < star.length; i++) {
			rank[star[i]] = i;
		}
	}

	/** By angle, from just above the leftward direction once round. */
	private int compare(int one, int other) {
		Coordinate centre = origin(one).coordinate;
		Coordinate p = corner(one);
		Coordinate q = corner(other);
		boolean upperP = upper(centre, p);
		boolean upperQ = upper(centre, q);
		if (upperP != upperQ) {
			return upperP ? 1 : -1;
		}
		int turn = Orientation.index(centre, p, q);
		if (turn == Orientation.COLLINEAR) {
			consistent = false;
		}
		return -turn;
	}

	private static boolean upper(Coordinate centre, Coordinate p) {
		return p.y > centre.y || p.y == centre.y && p.x > centre.x;
	}

	private static void poll(int step, Monitor monitor) {
		if (step % MONITOR_STEP == 0) {
			monitor.check();
		}
	}

	private void label(Monitor monitor) {
		java.util.Arrays.fill(left, UNKNOWN);
		java.util.Arrays.fill(component, -1);
		int components = 0;
		for (int node = 0; node < leaving.length; node++) {
			if (leaving[node].length > 0 && component[node] < 0) {
				mark(node, components++);
			}
		}
		Node[] leftmost = new Node[components];
		for (Edge edge : edges) {
			leftmost[component[edge.start.id]] = further(further(leftmost[component[edge.start.id]], edge.start),
					edge.end);
		}
		// one alone has nothing around it
		WindingProbe probe = new WindingProbe(components > 1 ? edges : List.of());
		for (Node node : leftmost) {
			monitor.check();
			int outside = probe.at(node, e -> component[e.start.id] != component[node.id]);
			spread(node, outside, monitor);
		}
	}

	private void mark(int first, int number) {
		component[first] = number;
		open[0] = first;
		openCount = 1;
		while (openCount > 0) {
			for (int half : leaving[open[--openCount]]) {
				int next = origin(twin(half)).id;
				if (component[next] < 0) {
					component[next] = number;
					open[openCount++] = next;
				}
			}
		}
	}

	private static Node further(Node best, Node node) {
		if (best == null) {
			return node;
		}
		int order = Double.compare(node.point.x(), best.point.x());
		if (order == 0) {
			order = Double.compare(node.point.y(), best.point.y());
		}
		return order < 0 ? node : best;
	}

	/** From the leftmost node of a component, left of which the winding is known. */
	private void spread(Node leftmost, int outside, Monitor monitor) {
		int[] star = leaving[leftmost.id];
		int last = star[0];
		for (int half : star) {
			if (steeper(leftmost, half, last)) {
				last = half;
			}
		}
		left[last] = outside;
		open[0] = last;
		openCount = 1;
		for (int step = 0; openCount > 0 && consistent; step++) {
			poll(step, monitor);
			int known = open[--openCount];
			// once round the node: the left of one half-edge is the right of the next
			int[] around = leaving[origin(known).id];
			int at = rank[known];
			for (int i = 0; i < around.length; i++) {
				int half = around[(at + i) % around.length];
				int next = around[(at + i + 1) % around.length];
				int right = left[half];
				set(twin(next), right);
				int value = right + winding(next);
				if (left[next] == UNKNOWN) {
					left[next] = value;
				} else if (left[next] != value) {
					consistent = false;
				}
			}
		}
	}

	private void set(int half, int value) {
		if (left[half] == UNKNOWN) {
			left[half] = value;
			open[openCount++] = half;
		} else if (left[half] != value) {
			consistent = false;
		}
	}

	/** Among half-edges that all run to the right, or straight up: which one has the greater angle. */
	private boolean steeper(Node centre, int half, int than) {
		return Orientation.index(centre.coordinate, corner(than), corner(half)) == Orientation.COUNTERCLOCKWISE;
	}
}
