package org.frisket.geometry.clean;

import java.util.ArrayList;
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
		Attempt[] ladder = Attempt.ladder(tolerance);
		Optional<Result> result = new SimpleOverlay(inside, tolerance).of(contours, windings, monitor)
				.or(() -> attempt(ladder[0], contours, windings, List.of()));
		if (result.isPresent()) {
			return result.get();
		}
		List<Repair> hooks = new ArrayList<>();
		List<Contour> plain = contours.stream()
				.map(c -> Contour.closed(new Hooks(tolerance, hooks).removeFrom(c.segments()))).toList();
		for (Attempt attempt : ladder) {
			result = attempt(attempt, plain, windings, hooks);
			if (result.isPresent()) {
				return result.get();
			}
		}
		throw new IllegalStateException("no valid region found for " + contours.size() + " contours");
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
		monitor.check();
		List<Source> sources = sources(input, windings);
		NodeIndex nodes = new NodeIndex(attempt.weld());
		List<Arc> arcs;
		if (attempt.grid() > 0) {
			arcs = new ArcCutter(nodes).cut(new GridNoder(attempt.grid(), attempt.deviation()).node(sources));
		} else {
			arcs = new ArcCutter(nodes).cut(sources);
			new ArcNoder(nodes, attempt.deviation(), attempt.snapCorners()).node(arcs, monitor);
		}
		List<Edge> edges = new EdgeCutter(attempt.weld(), attempt.deviation()).cut(arcs);
		Arrangement map = new Arrangement(edges, nodes.nodes().size());
		if (!map.isConsistent()) {
			return Optional.empty();
		}
		List<Repair> repairs = new ArrayList<>(made);
		List<Ring> rings = rings(attempt, map, input, repairs);
		List<Contour> contours = rings.stream().map(r -> r.contour).toList();
		if (new ContactCheck(contours, tolerance).find(monitor) != null
				|| attempt.grid() == 0 && !new ScanlineCheck(sources, contours, inside, tolerance).agrees()) {
			return Optional.empty();
		}
		return PieceAssembler.assemble(rings).map(pieces -> new Result(pieces, repairs));
	}

	private List<Ring> rings(Attempt attempt, Arrangement map, List<Contour> input, List<Repair> repairs) {
		ContourWeaver weaver = new ContourWeaver(map, 4 * attempt.weld());
		ShortSegments shortSegments = new ShortSegments(tolerance, attempt.bend(),
				s -> repairs.add(new Repair(Kind.SHORT_SEGMENT_REMOVED, s.start(), s.length())));
		Hooks hooks = new Hooks(tolerance, repairs);
		List<Ring> rings = new ArrayList<>();
		List<Ring> specks = new ArrayList<>();
		List<List<Visit>> walks = new BoundaryTracer(map, inside, attempt.hair()).trace();
		noteTurned(map, walks, input, repairs);
		for (List<Visit> walk : walks) {
			noteMeetings(map, walk, attempt.hair(), repairs);
			List<Segment> segments = hooks.removeFrom(shortSegments.removeFrom(weaver.weave(walk)));
			if (segments.isEmpty()) {
				continue;
			}
			Ring ring = new Ring(Contour.closed(segments), Winding.FIRST);
			(ring.isSpeck(tolerance) ? specks : rings).add(ring);
		}
		for (Ring speck : specks) {
			repairs.add(new Repair(Kind.SPECK_REMOVED, speck.contour.start(), Math.abs(speck.area)));
			rings.removeIf(speck::holds);
		}
		return rings;
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
