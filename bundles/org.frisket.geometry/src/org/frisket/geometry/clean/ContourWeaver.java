package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** Turns a walk along edges back into the source segments, and stretches of them, that the edges came from. */
final class ContourWeaver {

	private final Arrangement map;
	private final double slack;

	/** @param slack how much of a source, in mm, may have gone missing in a node without breaking it in two */
	ContourWeaver(Arrangement map, double slack) {
		this.map = map;
		this.slack = slack;
	}

	private record Run(Strand strand, Point start) {
	}

	/** Segments of the closed contour. */
	List<Segment> weave(List<Visit> walk) {
		List<Run> runs = new ArrayList<>();
		for (Visit visit : walk) {
			Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
			Strand longer = last == null || visit.moved() ? null : continued(last.strand(), visit.half());
			if (longer != null) {
				runs.set(runs.size() - 1, new Run(longer, last.start()));
			} else {
				runs.add(new Run(strands(visit.half()).get(0), visit.place()));
			}
		}
		closeRound(runs, walk.get(0).moved());
		List<Segment> segments = new ArrayList<>(runs.size());
		for (int i = 0; i < runs.size(); i++) {
			segments.add(segment(runs.get(i), runs.get((i + 1) % runs.size()).start()));
		}
		return segments;
	}

	private void closeRound(List<Run> runs, boolean firstMoved) {
		if (runs.size() < 2 || firstMoved) {
			return;
		}
		Run first = runs.get(0);
		Run last = runs.get(runs.size() - 1);
		Strand whole = last.strand().joined(first.strand(), slack);
		if (whole != null) {
			runs.remove(runs.size() - 1);
			runs.set(0, new Run(whole, last.start()));
		}
	}

	private Strand continued(Strand strand, int half) {
		for (Strand next : strands(half)) {
			Strand longer = strand.joined(next, slack);
			if (longer != null) {
				return longer;
			}
		}
		return null;
	}

	private List<Strand> strands(int half) {
		List<Strand> along = map.edge(half).strands;
		return Arrangement.along(half) ? along : along.stream().map(Strand::reversed).toList();
	}

	private static Segment segment(Run run, Point end) {
		Strand strand = run.strand();
		Segment whole = strand.source().segment();
		Segment part = strand.from() < strand.to() ? whole.between(strand.from(), strand.to())
				: whole.between(strand.to(), strand.from()).reversed();
		if (part.start().equals(run.start()) && part.end().equals(end)) {
			return part;
		}
		return part.withEnds(run.start(), end);
	}
}
