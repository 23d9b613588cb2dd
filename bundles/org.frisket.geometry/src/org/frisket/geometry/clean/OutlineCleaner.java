package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.IntPredicate;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.Repair.Kind;
import org.frisket.geometry.internal.CanonicalOrder;

/** Makes a {@link Region} from any outline. */
public final class OutlineCleaner {

	private final Memory memory;
	private final boolean anywhere;

	public OutlineCleaner() {
		this(Memory.NONE);
	}

	/** @param memory of what became of contours that lie together, for outlines that have some of them in common */
	public OutlineCleaner(Memory memory) {
		this(memory, false);
	}

	private OutlineCleaner(Memory memory, boolean anywhere) {
		this.memory = memory;
		this.anywhere = anywhere;
	}

	/**
	 * The same one, but contours that lie together are worked on where their models stand to each other, so that a word
	 * of joined letters is known again wherever it stands. They come out off their place by less than a millionth of a
	 * µm, the same ones whatever is remembered.
	 */
	public OutlineCleaner anywhere() {
		return new OutlineCleaner(memory, true);
	}

	/**
	 * The region that the outline's fill rule marks as inside. Segments that no other contour meets come out as they
	 * went in, though they may run the other way; a segment that is cut comes out as stretches of itself.
	 * <p>
	 * Nothing moves by more than the tolerance. Contours, gaps and strips narrower than it may vanish.
	 *
	 * @throws IllegalArgumentException if a coordinate is not finite
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public CleanResult clean(Outline outline, FillRule rule, Tolerance tolerance, Monitor monitor) {
		List<Repair> repairs = new ArrayList<>();
		List<Contour> open = new ArrayList<>();
		Copies copies = new Copies(rule, tolerance, memory);
		List<Contour> closed = closed(outline, tolerance, copies, open, repairs);
		if (rule == FillRule.NON_ZERO) {
			noteDuplicates(closed, repairs);
		}
		record Key(List<Contour> contours, FillRule rule, Tolerance tolerance) {
		}
		Overlay overlay = new Overlay(rule.inside(), tolerance, monitor);
		List<Piece> pieces = overlay(closed, List.of(), tolerance, monitor, repairs, (cluster, windings) -> copies
				.of(cluster, windings, monitor)
				.or(() -> anywhere ? copies.joined(cluster, c -> overlay.of(c, windings)) : Optional.empty())
				.orElseGet(() -> memory.get(new Key(cluster, rule, tolerance), () -> overlay.of(cluster, windings))));
		return new CleanResult(new Region(pieces), open, repairs);
	}

	static List<Piece> overlay(List<Contour> first, List<Contour> second, IntPredicate inside, Tolerance tolerance,
			Monitor monitor, List<Repair> repairs) {
		return overlay(first, second, tolerance, monitor, repairs, new Overlay(inside, tolerance, monitor)::of);
	}

	/** @param step what becomes of contours that lie together, with what each of them counts for */
	private static List<Piece> overlay(List<Contour> first, List<Contour> second, Tolerance tolerance, Monitor monitor,
			List<Repair> repairs, BiFunction<List<Contour>, int[], Overlay.Result> step) {
		List<Contour> contours = new ArrayList<>(first);
		contours.addAll(second);
		List<Piece> pieces = new ArrayList<>();
		List<List<Integer>> clusters = Clusters.of(contours, tolerance.mm(), monitor);
		int done = 0;
		for (List<Integer> cluster : clusters) {
			int[] windings = cluster.stream().mapToInt(i -> i < first.size() ? Winding.FIRST : Winding.SECOND).toArray();
			Overlay.Result result = step.apply(cluster.stream().map(contours::get).toList(), windings);
			pieces.addAll(result.pieces());
			repairs.addAll(result.repairs());
			monitor.worked((double) ++done / clusters.size());
		}
		return CanonicalOrder.merged(pieces);
	}

	private static void requireFinite(Contour contour, Copies copies) {
		if (copies.isFinite(contour)) {
			return;
		}
		for (Segment segment : contour.segments()) {
			if (!Double.isFinite(segment.areaTerm())) {
				throw new IllegalArgumentException("contour with a coordinate that is not finite: " + segment);
			}
		}
		copies.noteFinite(contour);
	}

	private static List<Contour> closed(Outline outline, Tolerance tolerance, Copies copies, List<Contour> open,
			List<Repair> repairs) {
		List<Contour> closed = new ArrayList<>();
		for (Contour contour : outline.contours()) {
			if (contour.isEmpty()) {
				continue;
			}
			requireFinite(contour, copies);
			if (contour.isClosed()) {
				closed.add(contour);
				continue;
			}
			double gap = contour.end().distance(contour.start());
			boolean closes = gap <= tolerance.mm() && contour.length() > 2 * tolerance.mm();
			repairs.add(new Repair(closes ? Kind.CONTOUR_CLOSED : Kind.CONTOUR_LEFT_OPEN, contour.end(), gap));
			if (closes) {
				closed.add(joined(contour));
			} else {
				open.add(contour);
			}
		}
		return closed;
	}

	/** The end is brought to the start. */
	private static Contour joined(Contour contour) {
		List<Segment> segments = new ArrayList<>(contour.segments());
		int last = segments.size() - 1;
		segments.set(last, segments.get(last).withEnds(segments.get(last).start(), contour.start()));
		return Contour.closed(segments);
	}

	/** Only notes them: edges that coincide are laid on top of each other later, where their windings add up. */
	private static void noteDuplicates(List<Contour> contours, List<Repair> repairs) {
		Map<Bounds, Contour> first = new HashMap<>();
		Set<Contour> seen = new HashSet<>();
		for (Contour contour : contours) {
			Contour before = first.putIfAbsent(contour.bounds(), contour);
			if (before == null) {
				// hardly any share a box with another: only those are looked at node by node
				continue;
			}
			seen.add(CanonicalOrder.startedAtTop(before));
			if (!seen.add(CanonicalOrder.startedAtTop(contour))) {
				repairs.add(new Repair(Kind.DUPLICATE_REMOVED, contour.start(), contour.length()));
			}
		}
	}
}
