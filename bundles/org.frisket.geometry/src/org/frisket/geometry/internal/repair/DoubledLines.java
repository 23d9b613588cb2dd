package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.internal.repair.Trace.Chord;
import org.frisket.geometry.internal.repair.Ways.Way;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairStep;

/**
 * Takes out what would be cut twice: stretches of lines that run within the tolerance along what is there already, the
 * earlier line staying. Lines that only cross or touch are left, however flat the angle.
 */
public final class DoubledLines implements RepairStep {

	private static final String WHOLE = "whole";
	private static final Option DOUBLED = Option.choice("doubled", Words.of("DoubledLines_closed"), WHOLE, "partly");

	/** Parts of the tolerance: what flattening may take, and how far a doubled stretch may lie off. */
	private static final double FLATTENING = 0.125;
	private static final double APART = 0.5;
	/** Shorter stretches, in tolerances, are no doubling but neighbourhood. */
	private static final double SHORTEST = 10;
	/** A stretch that runs along another does so at any distance; one that crosses or touches it gains by more reach. */
	private static final double STEADY = 0.85;
	private static final double ROUNDING = 1e-7;

	@Override
	public List<Option> options() {
		return List.of(DOUBLED);
	}

	@Override
	public Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor) {
		boolean whole = options.text(DOUBLED).equals(WHOLE);
		Coverage kept = new Coverage();
		List<Contour> lines = new ArrayList<>();
		List<Mend> mends = new ArrayList<>();
		for (Contour line : artwork.lines()) {
			monitor.check();
			if (line.isEmpty()) {
				continue;
			}
			Trace trace = new Trace(line, FLATTENING * tolerance.mm());
			List<Way> doubled = doubled(trace, kept, tolerance.mm());
			if (whole && line.isClosed() && !isWhole(doubled, trace)) {
				doubled = List.of();
			}
			for (Way way : doubled) {
				mends.add(new Mend("doubled-line-removed", trace.at((way.from() + way.to()) / 2), way.length(), "mm"));
			}
			for (Contour rest : rest(trace, doubled)) {
				lines.add(rest);
				new Trace(rest, FLATTENING * tolerance.mm()).chords().forEach(kept::add);
			}
		}
		return new Mended(artwork.withLines(lines), mends);
	}

	private static boolean isWhole(List<Way> doubled, Trace trace) {
		return doubled.size() == 1 && doubled.get(0).length() >= trace.length() * (1 - ROUNDING);
	}

	private static List<Way> doubled(Trace trace, Coverage kept, double tolerance) {
		Coverage.CountsFor any = (chord, other) -> true;
		List<Way> found = steady(trace, kept.of(trace, APART * tolerance, any),
				kept.of(trace, 2 * APART * tolerance, any), tolerance);
		found.addAll(doubledByItself(trace, found, tolerance));
		return Ways.united(found, 0).ways();
	}

	private static List<Way> steady(Trace trace, Ways near, Ways wide, double tolerance) {
		List<Way> steady = new ArrayList<>();
		double shortest = Math.min(SHORTEST * tolerance, trace.length() * (1 - ROUNDING));
		for (Way way : near.ways()) {
			Way around = wide.around(way, ROUNDING);
			if (way.length() >= shortest && around != null && way.length() >= STEADY * around.length()) {
				// a doubled side reaches a little past its corner
				double from = trace.jointAfter(way.from(), 2 * tolerance);
				double to = trace.jointBefore(way.to(), 2 * tolerance);
				if (from < to) {
					steady.add(new Way(from, to));
				}
			}
		}
		return steady;
	}

	/** A line that comes back along its own way: the later stretch goes, if what it runs along stays. */
	private static List<Way> doubledByItself(Trace trace, List<Way> gone, double tolerance) {
		Coverage own = new Coverage();
		trace.chords().forEach(own::add);
		double apart = SHORTEST * tolerance;
		// what lies close by on the way is no doubling unless it runs back
		Coverage.CountsFor earlier = (chord, other) -> other.to() <= chord.from()
				&& (other.to() + apart <= chord.from() || runsBack(chord, other));
		List<Way> later = steady(trace, own.of(trace, APART * tolerance, earlier),
				own.of(trace, 2 * APART * tolerance, earlier), tolerance);
		if (later.isEmpty()) {
			return later;
		}
		List<Way> all = new ArrayList<>(gone);
		all.addAll(later);
		Ways allGone = Ways.united(all, 0);
		Ways proved = own.of(trace, 2 * APART * tolerance, (chord, other) -> earlier.test(chord, other)
				&& allGone.ways().stream().noneMatch(way -> other.to() > way.from() && other.from() < way.to()));
		later.removeIf(way -> proved.around(way, ROUNDING) == null);
		return later;
	}

	private static boolean runsBack(Chord chord, Chord other) {
		return chord.end().minus(chord.start()).dot(other.end().minus(other.start())) < 0;
	}

	private static List<Contour> rest(Trace trace, List<Way> doubled) {
		if (doubled.isEmpty()) {
			return List.of(trace.line());
		}
		List<Contour> rest = new ArrayList<>();
		double from = 0;
		for (Way way : doubled) {
			add(trace, from, way.from(), rest);
			from = way.to();
		}
		add(trace, from, trace.length(), rest);
		joinAtStart(trace, doubled, rest);
		return rest;
	}

	private static void add(Trace trace, double from, double to, List<Contour> rest) {
		List<Segment> segments = to > from ? trace.between(from, to) : List.of();
		if (!segments.isEmpty()) {
			rest.add(Contour.open(segments));
		}
	}

	/** What a closed line has left on both sides of its start is one piece. */
	private static void joinAtStart(Trace trace, List<Way> doubled, List<Contour> rest) {
		boolean through = doubled.get(0).from() > 0 && doubled.get(doubled.size() - 1).to() < trace.length();
		if (trace.line().isClosed() && through && rest.size() > 1) {
			List<Segment> joined = new ArrayList<>(rest.remove(rest.size() - 1).segments());
			joined.addAll(rest.get(0).segments());
			rest.set(0, Contour.open(joined));
		}
	}
}
