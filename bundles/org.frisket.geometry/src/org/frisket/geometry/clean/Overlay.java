package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.Repair.Kind;

/** Makes pieces from sources and a rule of what is inside: tries, checks, and tries again by more robust means. */
final class Overlay {

	private static final int MOST_FILLINGS = 24;
	/** Segments from which on a draft takes so long that all places found are filled at once, and how many at most. */
	private static final int MANY_SEGMENTS = 4000;
	private static final int MOST_CONTACTS = 256;
	private static final int MOST_TRIMMINGS = 4;
	/** Half the diagonal of a filling, in tolerances. */
	private static final double FILLING = 0.6;

	private final IntPredicate inside;
	private final double tolerance;
	private final Monitor monitor;

	record Result(List<Piece> pieces, List<Repair> repairs) {
	}

	Overlay(IntPredicate inside, Tolerance tolerance, Monitor monitor) {
		this.inside = inside;
		this.tolerance = tolerance.mm();
		this.monitor = monitor;
	}

	/** @param windings what each of the closed contours counts for */
	Result of(List<Contour> contours, int[] windings) {
		Attempt[] faithful = Attempt.faithful(tolerance);
		Optional<Result> result = new SimpleOverlay(inside, tolerance).of(contours, windings, monitor)
				.or(() -> attempt(faithful[0], contours, windings, List.of()));
		if (result.isPresent()) {
			return result.get();
		}
		List<Repair> hooks = new ArrayList<>();
		List<Contour> plain = contours.stream().map(c -> withoutHooks(c, hooks)).toList();
		// what has failed already fails again, unless it meets something new
		Attempt[] left = plain.equals(contours) ? Arrays.copyOfRange(faithful, 1, faithful.length) : faithful;
		return attempt(left, plain, windings, hooks).or(() -> filled(faithful[1], plain, windings, hooks))
				.or(() -> attempt(Attempt.robust(tolerance), plain, windings, hooks))
				.orElseThrow(() -> new IllegalStateException("no valid region found for " + plain.size() + " contours"));
	}

	private Contour withoutHooks(Contour contour, List<Repair> made) {
		List<Segment> segments = new Hooks(tolerance, made).removeFrom(contour.segments());
		return segments == contour.segments() ? contour : Contour.closed(segments);
	}

	private Optional<Result> attempt(Attempt[] attempts, List<Contour> input, int[] windings, List<Repair> made) {
		for (Attempt attempt : attempts) {
			Optional<Result> result = attempt(attempt, input, windings, made);
			if (result.isPresent()) {
				return result;
			}
		}
		return Optional.empty();
	}

	private static List<Source> sources(List<Contour> contours, int[] windings) {
		List<Source> sources = new ArrayList<>();
		for (int i = 0; i < windings.length; i++) {
			for (Segment segment : contours.get(i).segments()) {
				sources.add(new Source(segment, i, windings[i]));
			}
		}
		return sources;
	}

	private Optional<Result> attempt(Attempt attempt, List<Contour> input, int[] windings, List<Repair> made) {
		return draft(attempt, input, windings, made, 1).filter(Draft::isApart).flatMap(d -> d.result(monitor));
	}

	/** What an attempt comes to; it is no result as long as its rings come too near to each other somewhere. */
	private record Draft(List<Ring> rings, List<Repair> repairs, List<Point> contacts) {

		boolean isApart() {
			return contacts.isEmpty();
		}

		Optional<Result> result(Monitor monitor) {
			return PieceAssembler.assemble(rings, monitor).map(pieces -> new Result(pieces, repairs));
		}

		List<Contour> contours() {
			return rings.stream().map(ring -> ring.contour).toList();
		}
	}

	/** @param contacts how many of the places to look for where rings come too near to each other */
	private Optional<Draft> draft(Attempt attempt, List<Contour> input, int[] windings, List<Repair> made, int contacts) {
		monitor.check();
		List<Source> sources = sources(input, windings);
		NodeIndex nodes = new NodeIndex(attempt.weld());
		List<Arc> arcs;
		if (attempt.grid() > 0) {
			arcs = new ArcCutter(nodes).cut(new GridNoder(attempt.grid(), attempt.deviation()).node(sources), monitor);
		} else {
			arcs = new ArcCutter(nodes).cut(sources, monitor);
			new ArcNoder(nodes, attempt.deviation(), attempt.snapCorners()).node(arcs, monitor);
		}
		monitor.check();
		List<Edge> edges = new EdgeCutter(attempt.weld(), attempt.deviation()).cut(arcs, monitor);
		Arrangement map = new Arrangement(edges, nodes.nodes().size(), monitor);
		if (!map.isConsistent()) {
			return Optional.empty();
		}
		List<Repair> repairs = new ArrayList<>(made);
		List<Ring> rings = rings(attempt, map, input, repairs);
		monitor.check();
		List<Contour> contours = rings.stream().map(r -> r.contour).toList();
		if (attempt.grid() == 0 && !new ScanlineCheck(sources, contours, inside, tolerance).agrees(monitor)) {
			return Optional.empty();
		}
		return Optional.of(new Draft(rings, repairs, new ContactCheck(contours, tolerance).find(contacts, monitor)));
	}

	/**
	 * Where two stretches run on beside each other nearer than can be told apart, the gap between them is filled, place
	 * by place, so that the rest can stay as it is. In a large drawing places that are far from each other are filled at
	 * once: one draft for each of them would take too long, and there may be many.
	 */
	private Optional<Result> filled(Attempt attempt, List<Contour> contours, int[] windings, List<Repair> made) {
		int segments = contours.stream().mapToInt(Contour::nodeCount).sum();
		int atOnce = segments < MANY_SEGMENTS ? 1 : MOST_CONTACTS;
		Optional<Draft> draft = draft(attempt, contours, windings, made, atOnce);
		Overlay union = new Overlay(Winding.NON_ZERO, new Tolerance(tolerance), monitor);
		for (int i = 0; i < MOST_FILLINGS && draft.isPresent() && !draft.get().isApart(); i++) {
			List<Repair> repairs = new ArrayList<>(draft.get().repairs);
			List<Contour> more = new ArrayList<>(draft.get().contours());
			for (Point contact : draft.get().contacts) {
				repairs.add(new Repair(Kind.GAP_FILLED, contact, FILLING * tolerance));
				more.add(filling(contact, FILLING * tolerance));
			}
			int[] once = new int[more.size()];
			Arrays.fill(once, Winding.FIRST);
			draft = union.draft(attempt, more, once, repairs, atOnce);
		}
		return draft.filter(Draft::isApart).flatMap(d -> d.result(monitor));
	}

	/** A square that stands on its corner, wound as outer contours are. */
	private static Contour filling(Point centre, double radius) {
		return Contour.polygon(List.of(centre.plus(new Point(radius, 0)), centre.plus(new Point(0, -radius)),
				centre.plus(new Point(-radius, 0)), centre.plus(new Point(0, radius))));
	}

	private List<Ring> rings(Attempt attempt, Arrangement map, List<Contour> input, List<Repair> repairs) {
		ContourWeaver weaver = new ContourWeaver(map, 4 * attempt.weld());
		ShortSegments shortSegments = new ShortSegments(tolerance, attempt.bend(),
				s -> repairs.add(new Repair(Kind.SHORT_SEGMENT_REMOVED, s.start(), s.length())));
		Hooks hooks = new Hooks(tolerance, repairs);
		List<Ring> rings = new ArrayList<>();
		List<Ring> specks = new ArrayList<>();
		List<List<Visit>> walks = new BoundaryTracer(map, inside, attempt.hair()).trace(monitor);
		noteTurned(map, walks, input, repairs);
		for (List<Visit> walk : walks) {
			monitor.check();
			noteMeetings(map, walk, attempt.hair(), repairs);
			List<Segment> segments = trimmed(weaver.weave(walk), shortSegments, hooks);
			if (segments.isEmpty()) {
				continue;
			}
			Ring ring = new Ring(Contour.closed(segments), Winding.FIRST);
			(ring.isSpeck(tolerance) ? specks : rings).add(ring);
		}
		for (Ring speck : specks) {
			repairs.add(new Repair(Kind.SPECK_REMOVED, speck.contour.start(), Math.abs(speck.area)));
		}
		double largest = specks.stream().mapToDouble(speck -> Math.abs(speck.area)).max().orElse(0);
		rings.removeIf(ring -> Math.abs(ring.area) < largest && specks.stream().anyMatch(speck -> speck.holds(ring)));
		return rings;
	}

	/** What is left of a segment without its hook may be a short one. */
	private static List<Segment> trimmed(List<Segment> contour, ShortSegments shortSegments, Hooks hooks) {
		List<Segment> segments = shortSegments.removeFrom(contour);
		for (int i = 0; i < MOST_TRIMMINGS; i++) {
			List<Segment> straight = hooks.removeFrom(segments);
			if (straight.equals(segments)) {
				break;
			}
			segments = shortSegments.removeFrom(straight);
		}
		return segments;
	}

	private static void noteMeetings(Arrangement map, List<Visit> walk, double hair, List<Repair> repairs) {
		for (Visit visit : walk) {
			Point place = map.origin(visit.half()).point;
			int met = map.leaving[map.origin(visit.half()).id].length;
			if (visit.moved()) {
				repairs.add(new Repair(Kind.TOUCH_PARTED, place, hair));
			} else if (met > 2) {
				repairs.add(new Repair(Kind.CROSSING_RESOLVED, place, met));
			}
		}
	}

	/** Contours of which all that bounds the result runs against them. */
	private static void noteTurned(Arrangement map, List<List<Visit>> walks, List<Contour> input,
			List<Repair> repairs) {
		BitSet kept = new BitSet();
		BitSet turned = new BitSet();
		for (List<Visit> walk : walks) {
			for (Visit visit : walk) {
				int contour = map.edge(visit.half()).strands.get(0).source().contour();
				(Arrangement.along(visit.half()) ? kept : turned).set(contour);
			}
		}
		turned.andNot(kept);
		turned.stream().mapToObj(input::get).forEach(
				c -> repairs.add(new Repair(Kind.WINDING_FIXED, c.start(), Math.abs(c.signedArea()))));
	}
}
