package org.frisket.ui.material.internal.trials;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.material.advice.Advice;
import org.frisket.material.advice.PressureChart;
import org.frisket.material.advice.Work;
import org.frisket.material.desk.DeskState;
import org.frisket.material.trials.TestSheet;
import org.frisket.material.trials.Trial;

/** Has advice worked out off the UI thread; only the answer to the last question is told. */
public final class Advising {

	/** What is advised for a piece of work; no chart where neither weight nor thickness is known. */
	public record Answer(Work work, Advice advice, Optional<PressureChart> chart) {
	}

	private final Display display;
	private final Consumer<Answer> client;
	private Job asked;

	public Advising(Display display, Consumer<Answer> client) {
		this.display = display;
		this.client = client;
	}

	/** @param sheet whose verdicts count as they are here; null for none */
	public void ask(DeskState state, Work work, TestSheet sheet) {
		stop();
		Job job = new Job(Messages.Advising_name) {
			@Override
			protected IStatus run(IProgressMonitor monitor) {
				List<Trial> trials = sheet == null ? state.trials() : state.trialsWith(sheet);
				Advice advice = state.advisor(trials).advise(work);
				Answer answer = new Answer(work, advice, PressureChart.of(trials, work, advice));
				if (!monitor.isCanceled() && !display.isDisposed()) {
					display.asyncExec(() -> answered(this, answer));
				}
				return Status.OK_STATUS;
			}
		};
		job.setSystem(true);
		asked = job;
		job.schedule();
	}

	private void answered(Job job, Answer answer) {
		if (job == asked) {
			asked = null;
			client.accept(answer);
		}
	}

	public boolean isQuiet() {
		return asked == null;
	}

	public void stop() {
		if (asked != null) {
			asked.cancel();
			asked = null;
		}
	}
}
