package org.frisket.ui.orders.internal.book;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.paper.StageWords;
import org.frisket.ui.studio.StepHistory;
import org.frisket.ui.studio.StepUndo;

/**
 * The changes of stages that were made here, in the history of the workbench: each can be taken back as long as nobody
 * has moved the job on. They are made off the UI thread, with progress, and can be called off between two jobs.
 */
final class StageHistory {

	private static final int STEPS = 100;

	/** What is done to a change. */
	private interface Way {
		void go(StageMoves moves, IProgressMonitor monitor) throws ExecutionException;
	}

	private final StepHistory history = new StepHistory(Messages.StageHistory_name, STEPS);

	/** Brings jobs to a stage, in a while. @param after told on the UI thread what was refused */
	void move(List<Entry> jobs, Stage to, String remark, Consumer<List<StageMoves.Refused>> after) {
		String label = jobs.size() == 1
				? NLS.bind(Messages.StageHistory_moveOne, jobs.get(0).number(), StageWords.of(to))
				: NLS.bind(Messages.StageHistory_move, jobs.size(), StageWords.of(to));
		run(label, new StageMoves(label, jobs, to, remark), (moves, monitor) -> {
			moves.execute(monitor, null);
			if (!moves.isEmpty()) {
				history.add(moves);
			}
		}, after);
	}

	/** Undo and redo of stages for a view. @param after as with {@link #move} */
	StepUndo.Steps steps(Consumer<List<StageMoves.Refused>> after) {
		return history.steps((back, step) -> run(step.getLabel(), (StageMoves) step, (moves, monitor) -> {
			history.take(back, moves, monitor);
			if (moves.isEmpty()) {
				history.drop(moves);
			}
		}, after));
	}

	/** Another studio's jobs are nothing to those here. */
	void forget() {
		history.forget();
	}

	private static void run(String label, StageMoves moves, Way way, Consumer<List<StageMoves.Refused>> after) {
		Display display = Display.getCurrent();
		Job job = new Job(label) {
			@Override
			protected IStatus run(IProgressMonitor monitor) {
				try {
					way.go(moves, monitor);
				} catch (ExecutionException e) {
					ILog.of(StageHistory.class).error(label, e);
				}
				if (!display.isDisposed()) {
					display.asyncExec(() -> after.accept(moves.refused()));
				}
				return Status.OK_STATUS;
			}
		};
		job.setUser(moves.size() > 1);
		job.schedule();
	}
}
