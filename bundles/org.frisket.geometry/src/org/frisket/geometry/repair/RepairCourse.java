package org.frisket.geometry.repair;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.internal.repair.Covered;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.RepairStep.Moves;

/**
 * Takes artwork through steps, one after the other, within one tolerance. Half of it is for the ends of lines, if a step
 * moves those: an end that has been joined is none any more, so that all such steps have the same half. The rest is
 * shared out evenly among the steps that move anything. What options allow comes on top.
 */
public final class RepairCourse {

	private static final double ENDS = 0.5;
	private static final int MOST_ROUNDS = 5;

	private final List<Stage> stages;

	/** A step, and what is decided about it. */
	public record Stage(RepairStep step, OptionValues options) {

		/** With its defaults. */
		public Stage(RepairStep step) {
			this(step, OptionValues.defaults(step.options()));
		}

		private boolean settles() {
			return step.settles();
		}

		private boolean moves(Moves what) {
			return step.moves(options) == what;
		}
	}

	public RepairCourse(List<Stage> stages) {
		this.stages = List.copyOf(stages);
	}

	/**
	 * @throws IllegalArgumentException if a coordinate is not finite
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public Mended run(Artwork artwork, Tolerance tolerance, Monitor monitor) {
		return run(artwork, tolerance, monitor, false);
	}

	/**
	 * As {@link #run}, and measures how far anything was moved. What it has taken then holds the stretches of areas too
	 * that are covered by others.
	 */
	public Proved prove(Artwork artwork, Tolerance tolerance, Monitor monitor) {
		Mended mended = run(artwork, tolerance, monitor, true);
		return new Proved(mended, Movement.of(artwork, mended, tolerance, monitor));
	}

	/** A result, and how far it lies from what it was made of. */
	public record Proved(Mended mended, Movement movement) {
	}

	/**
	 * A line that was moved may have come to lie on another one, so that there is more to do: the course is run again
	 * until it changes nothing, and a course over its own result does nothing then. A round that would bring anything
	 * further than the tolerance from where it was at first is left out, and after a few there is an end.
	 */
	private Mended run(Artwork artwork, Tolerance tolerance, Monitor monitor, boolean covered) {
		requireFinite(artwork);
		Set<Stage> changing = new HashSet<>();
		Mended result = round(new Mended(artwork, List.of()), tolerance, monitor, covered, changing);
		if (artwork.lines().isEmpty() && changing.stream().allMatch(Stage::settles) && changing.size() <= 1) {
			// where there is one alone that acts, its own result is all that it would meet again
			return result;
		}
		Artwork before = artwork;
		for (int i = 1; i < MOST_ROUNDS && !result.artwork().equals(before); i++) {
			Mended next = round(result, tolerance, monitor::isCancelled, covered, changing);
			boolean changed = !next.artwork().equals(result.artwork());
			if (changed && !Movement.ofResult(artwork, next, tolerance, monitor).isWithin(tolerance.mm())) {
				break;
			}
			before = result.artwork();
			result = changed ? next : result;
		}
		return result;
	}

	private static void requireFinite(Artwork artwork) {
		for (Contour contour : artwork.toOutline().contours()) {
			for (Segment segment : contour.segments()) {
				if (!Double.isFinite(segment.areaTerm())) {
					throw new IllegalArgumentException("artwork with a coordinate that is not finite: " + segment);
				}
			}
		}
	}

	/**
	 * All stages once, on what has become of artwork so far.
	 *
	 * @param changing gets those that changed anything
	 */
	private Mended round(Mended soFar, Tolerance tolerance, Monitor monitor, boolean covered, Set<Stage> changing) {
		Artwork current = soFar.artwork();
		List<Mend> mends = new ArrayList<>(soFar.mends());
		List<Contour> taken = new ArrayList<>(soFar.taken());
		List<Contour> brought = new ArrayList<>(soFar.brought());
		for (int i = 0; i < stages.size(); i++) {
			monitor.check();
			Stage stage = stages.get(i);
			Mended mended = stage.step.mend(current, stage.options, share(stage, tolerance), monitor.part(i, stages.size()));
			mends.addAll(mended.mends());
			taken.addAll(mended.taken());
			brought.addAll(mended.brought());
			if (!current.equals(mended.artwork())) {
				changing.add(stage);
			}
			if (covered && !current.areas().equals(mended.artwork().areas())) {
				List<Contour> left = new ArrayList<>(mended.artwork().toOutline().contours());
				left.addAll(mended.taken());
				taken.addAll(Covered.stretches(current.areas(), left, tolerance.mm(), monitor));
			}
			current = mended.artwork();
			monitor.worked((i + 1.0) / stages.size());
		}
		return new Mended(current, mends, taken, brought);
	}

	/** What a stage gets of the tolerance. */
	Tolerance share(Stage stage, Tolerance tolerance) {
		double ends = stages.stream().anyMatch(each -> each.moves(Moves.ENDS)) ? ENDS : 0;
		if (stage.moves(Moves.ENDS)) {
			return tolerance.share(ends);
		}
		long others = stages.stream().filter(each -> each.moves(Moves.ALL)).count();
		return tolerance.share((1 - ends) / Math.max(1, others));
	}
}
