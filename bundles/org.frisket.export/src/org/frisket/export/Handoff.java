package org.frisket.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedJob;
import org.frisket.run.Load;
import org.frisket.run.MachineRun;
import org.frisket.run.RunMaker;
import org.frisket.run.Workshop;
import org.frisket.sheets.LaidSheet;
import org.frisket.toolpath.RunChoices;

/** What goes into one file: a sheet with what lies on it, or a job as it lies on the bench. */
public final class Handoff {

	private final Load load;
	private final WorkshopSource workshop;
	private final RunChoices choices;
	private MachineRun run;

	private Handoff(Load load, WorkshopSource workshop, RunChoices choices) {
		this.load = load;
		this.workshop = workshop;
		this.choices = choices;
	}

	/** A job as it lies on the bench, for a machine of no particular make. */
	public static Handoff of(PreparedJob job) {
		return of(job, Workshop.plain(), RunChoices.plain());
	}

	/** A job as it lies on the bench. */
	public static Handoff of(PreparedJob job, Workshop workshop, RunChoices choices) {
		return of(job, () -> workshop, choices);
	}

	/** A job as it lies on the bench. */
	public static Handoff of(PreparedJob job, WorkshopSource workshop, RunChoices choices) {
		return new Handoff(Load.bench(job), workshop, choices);
	}

	public static Handoff of(LaidSheet laid, Workshop workshop, RunChoices choices) {
		return of(laid, () -> workshop, choices);
	}

	public static Handoff of(LaidSheet laid, WorkshopSource workshop, RunChoices choices) {
		return new Handoff(Load.of(laid), workshop, choices);
	}

	/** The same with a run that was made of it before, such as the one on the screen. */
	public Handoff with(MachineRun made) {
		Handoff handoff = new Handoff(load, workshop, choices);
		handoff.run = made;
		return handoff;
	}

	/** All that is shown, where it lies: in mm, y down. */
	public PreparedJob job() {
		return load.content();
	}

	/** Empty for a job as it lies on the bench. */
	public Optional<Sheet> sheet() {
		return load.sheet();
	}

	/**
	 * What the file shows, in the frame of {@link #job()}: the whole sheet, which begins at 0, 0; or what lies on the bench.
	 *
	 * @param margin in mm round what lies on the bench; a sheet has its own
	 */
	public Bounds page(double margin) {
		return load.sheet().isPresent() ? load.page() : load.page().grown(margin);
	}

	/**
	 * The work in the order in which a machine does it, in the frame of {@link #job()}; computed when first asked for.
	 *
	 * @throws UncheckedIOException if what is known of the machine cannot be looked up; whoever writes the file tells of it
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public synchronized MachineRun run(Monitor monitor) {
		if (run == null) {
			try {
				run = RunMaker.of(load, workshop.get(), choices, monitor);
			} catch (IOException e) {
				throw new UncheckedIOException(e);
			}
		}
		return run;
	}
}
