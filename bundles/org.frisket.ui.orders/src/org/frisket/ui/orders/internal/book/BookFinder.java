package org.frisket.ui.orders.internal.book;

import java.time.LocalDate;
import java.util.List;
import java.util.function.BiConsumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.orders.Entry;
import org.frisket.orders.desk.BookQuery;
import org.frisket.orders.desk.BookSight;
import org.frisket.orders.desk.BookTable;

/** Looks through the order book off the UI thread. Of several questions only the last is answered. */
final class BookFinder {

	/** What is asked. */
	private record Question(List<Entry> jobs, BookText names, BookQuery query, LocalDate today) {
	}

	private final Display display;
	private final BiConsumer<BookSight, BookText> found;
	private final Search search = new Search();
	private volatile Question question;

	/** @param found told on the UI thread */
	BookFinder(Display display, BiConsumer<BookSight, BookText> found) {
		this.display = display;
		this.found = found;
	}

	void find(List<Entry> jobs, BookText names, BookQuery query, LocalDate today) {
		question = new Question(jobs, names, query, today);
		search.schedule();
	}

	void dispose() {
		search.cancel();
	}

	private final class Search extends Job {

		private BookText names;
		private BookSight last;

		Search() {
			super(Messages.BookFinder_finding);
			setSystem(true);
			setPriority(INTERACTIVE);
		}

		@Override
		protected IStatus run(IProgressMonitor monitor) {
			Question now = question;
			boolean same = last != null && last.table().jobs() == now.jobs() && now.names().equals(names);
			BookTable table = same ? last.table() : BookTable.of(now.jobs(), now.names());
			BookSight sight = table.find(now.query(), now.today(), last);
			last = sight;
			names = now.names();
			if (!monitor.isCanceled() && !display.isDisposed()) {
				display.asyncExec(() -> {
					if (question == now) {
						found.accept(sight, now.names());
					}
				});
			}
			return Status.OK_STATUS;
		}
	}
}
