package org.frisket.ui.orders.internal.today;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PartInitException;
import org.frisket.orders.work.PlannedRun;
import org.frisket.orders.work.RunBook;
import org.frisket.orders.work.RunMark;
import org.frisket.orders.work.RunResult;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.OpenJob;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreJob;
import org.frisket.ui.views.Views;

/** What can be done with what is to be done today. */
final class TodayActions {

	private final TodayView view;
	/** Runs of which something was said here, the latest first; that is what can be taken back by the key for it. */
	private final Deque<Long> said = new ArrayDeque<>();

	TodayActions(TodayView view) {
		this.view = view;
	}

	/** Lays what is picked together, and opens the layout. */
	void layTogether() {
		List<Long> numbers = view.picks().numbers();
		if (numbers.isEmpty()) {
			view.say(Messages.TodayView_pick);
		} else {
			lay(numbers, false);
		}
	}

	private void lay(List<Long> numbers, boolean anyway) {
		new LayTogether(numbers, anyway, new LayTogether.Client() {

			@Override
			public void laid(PlannedRun run) {
				view.tell(NLS.bind(Messages.TodayActions_laid, run.number(), run.sheets().size()));
				OrderDesk.get().refresh();
				view.read();
				open(run);
			}

			@Override
			public void ruledOut(String why) {
				if (MessageDialog.openQuestion(shell(), Messages.TodayActions_rule,
						NLS.bind(Messages.TodayActions_anyway, why))) {
					lay(numbers, true);
				}
			}

			@Override
			public void refused(String why) {
				view.say(why);
				view.read();
			}
		}).schedule();
	}

	/** Opens the run, or the job, under the cursor. */
	void open() {
		Optional<PlannedRun> run = view.job().isPresent() ? Optional.empty() : view.run();
		run.ifPresentOrElse(this::open, () -> view.job().ifPresent(this::open));
	}

	private void open(PlannedRun run) {
		open(run.job());
	}

	/** With its sheets before it. */
	private void open(long number) {
		if (OpenJob.run(view.getSite(), number, view::say)) {
			try {
				view.getSite().getPage().showView(Views.SHEETS_ID);
			} catch (PartInitException cannot) {
				view.say(String.valueOf(cannot.getMessage()));
			}
		}
	}

	/** Asks what was done of the run under the cursor. */
	void done() {
		Optional<PlannedRun> run = view.run();
		if (run.isEmpty()) {
			view.say(Messages.TodayActions_noRun);
			return;
		}
		DoneDialog dialog = new DoneDialog(shell(), run.get(), view.shown());
		if (dialog.open() == Window.OK) {
			say(run.get().number(), dialog.mark());
		}
	}

	/** The run under the cursor comes to nothing. */
	void callOff() {
		view.run().ifPresentOrElse(run -> {
			if (MessageDialog.openQuestion(shell(), Messages.TodayActions_off,
					NLS.bind(Messages.TodayActions_offAsk, run.number()))) {
				say(run.number(), RunMark.off(run));
			}
		}, () -> view.say(Messages.TodayActions_noRun));
	}

	private void say(long run, RunMark mark) {
		change(() -> new RunBook(Studio.folder()).mark(run, mark, OrderDesk.person()), result -> {
			said.push(run);
			told(Messages.TodayActions_done, result);
		});
	}

	/** Takes back what was said last here. */
	void takeBackLast() {
		if (!said.isEmpty()) {
			long run = said.pop();
			change(() -> new RunBook(Studio.folder()).takeBack(run, OrderDesk.person()),
					result -> told(Messages.TodayActions_back, result));
		}
	}

	private void change(StoreJob.Task<RunResult> task, Consumer<RunResult> done) {
		OrderDesk.get().change(Messages.TodayActions_job, task, result -> {
			done.accept(result);
			OrderDesk.get().refresh();
			view.read();
		}, view::say);
	}

	private void told(String what, RunResult result) {
		view.setUndoable(!said.isEmpty());
		String moves = result.moves().stream().map(move -> Long.toString(move.number()))
				.collect(Collectors.joining(", ")); //$NON-NLS-1$
		view.tell(NLS.bind(what, result.run().number())
				+ (moves.isEmpty() ? "" : NLS.bind(Messages.TodayActions_moves, moves)) //$NON-NLS-1$
				+ (result.notes().isEmpty() ? "" : "\n" + String.join("\n", result.notes()))); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private Shell shell() {
		return view.getSite().getShell();
	}
}
