package org.frisket.ui.orders.internal.docket;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.paper.BookPapers;
import org.frisket.orders.paper.StageWords;
import org.frisket.orders.stages.StageRuleException;
import org.frisket.orders.work.JobStages;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.OrderDesk;

/** Changes of stage; what a rule of the studio is against, can be done all the same this once. */
final class StageMove {

	/** What came of it: the job as it is now, or why a rule is against it. */
	private record Outcome(JobStages.Moved moved, String against) {
	}

	private StageMove() {
	}

	static void move(DocketView view, Entry entry, Stage to, String remark) {
		OrderDesk.get().change(NLS.bind(Messages.StageMove_name, entry.number()), () -> {
			BookPapers papers = Means.ofStudio();
			try {
				return new Outcome(stages().move(entry.number(), to, OrderDesk.person(), remark,
						() -> papers.blocking(entry.number())), ""); //$NON-NLS-1$
			} catch (StageRuleException e) {
				return new Outcome(new JobStages.Moved(entry, List.of()), e.reason());
			}
		}, outcome -> {
			if (outcome.against().isEmpty()) {
				done(view, outcome.moved());
			} else if (MessageDialog.open(MessageDialog.QUESTION, view.getSite().getShell(),
					Messages.StageMove_againstTitle,
					outcome.against(), 0, Messages.StageMove_leave,
					Messages.StageMove_anyway) == 1) {
				anyway(view, entry, to, remark);
			}
		}, refused -> view.say(refused, null));
	}

	private static void anyway(DocketView view, Entry entry, Stage to, String remark) {
		OrderDesk.get().change(NLS.bind(Messages.StageMove_name, entry.number()),
				() -> stages().moveAnyway(entry.number(), to, OrderDesk.person(), remark), now -> done(view, now),
				refused -> view.say(refused, null));
	}

	/** Back to the stage before the last change; the history tells of both. */
	static void undo(DocketView view, Entry entry) {
		OrderDesk.get().change(NLS.bind(Messages.StageMove_undoName, entry.number()),
				() -> new JobStages.Moved(stages().undo(entry.number(), OrderDesk.person()), List.of()),
				now -> done(view, now),
				refused -> view.say(refused, null));
	}

	private static JobStages stages() {
		return new JobStages(Studio.folder());
	}

	private static void done(DocketView view, JobStages.Moved moved) {
		if (!view.page().isDisposed()) {
			Entry now = moved.entry();
			view.say(Stream.concat(Stream.of(NLS.bind(Messages.StageMove_done, now.number(),
					StageWords.of(now.stage()))),
					moved.notes().stream()).collect(Collectors.joining("; ")), null); //$NON-NLS-1$
			if (view.entry().filter(shown -> shown.number() == now.number()).isPresent()) {
				view.show(now);
			}
		}
	}
}
