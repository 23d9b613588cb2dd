package org.frisket.geometry.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.RepairStep.Moves;

/**
 * Takes artwork through steps, one after the other, within one tolerance. Half of it is for the ends of lines, if a step
 * moves those: an end that has been joined is none any more, so that all such steps have the same half. The rest is
 * shared out evenly among the steps that move anything. What options allow comes on top.
 */
public final class RepairCourse {

	private static final double ENDS = 0.5;

	private final List<Stage> stages;

	/** A step, and what is decided about it. */
	public record Stage(RepairStep step, OptionValues options) {

		/** With its defaults. */
		public Stage(RepairStep step) {
			this(step, OptionValues.defaults(step.options()));
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
		Artwork current = artwork;
		List<Mend> mends = new ArrayList<>();
		for (int i = 0; i < stages.size(); i++) {
			monitor.check();
			Stage stage = stages.get(i);
			Mended mended = stage.step.mend(current, stage.options, share(stage, tolerance), part(monitor, i));
			current = mended.artwork();
			mends.addAll(mended.mends());
			monitor.worked((i + 1.0) / stages.size());
		}
		return new Mended(current, mends);
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

	private Monitor part(Monitor whole, int index) {
		return new Monitor() {
			@Override
			public boolean isCancelled() {
				return whole.isCancelled();
			}

			@Override
			public void worked(double fraction) {
				whole.worked((index + fraction) / stages.size());
			}
		};
	}
}
