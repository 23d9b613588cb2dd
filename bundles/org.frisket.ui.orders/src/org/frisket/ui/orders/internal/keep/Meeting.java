package org.frisket.ui.orders.internal.keep;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Map;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.PlatformUI;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.orders.Entry;
import org.frisket.orders.compare.JobComparison;
import org.frisket.orders.compare.JobMerge;
import org.frisket.orders.compare.Row;
import org.frisket.orders.compare.Side;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.JobPlace.Held;
import org.frisket.ui.bench.PlacedBench;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreWatch;

/** Two desks have changed one job: shows what each has done, asks what is to become of it, and does that. */
final class Meeting {

	private final BookPlace place;
	private final PlacedBench bench;

	Meeting(BookPlace place, PlacedBench bench) {
		this.place = place;
		this.bench = bench;
	}

	/** What is worked out while nothing can be typed. */
	private interface Work<T> {

		T run() throws Exception;
	}

	/**
	 * @param theirs what is in the order book now
	 * @return whether all that is on the bench is in the order book then
	 */
	boolean hold(Held theirs) {
		try {
			Job mine = bench.job();
			byte[] base = bench.base();
			JobComparison comparison = work(() -> {
				Job now = theirs.job(place.name());
				// a copy of an older time that does not tell what it was made of: all that differs has to be chosen
				return JobComparison.of(base.length > 0 ? JobFile.load(base, place.name()) : now, mine, now);
			});
			List<Row> rows = work(() -> comparison.rows(LengthText::of));
			MergeDialog dialog = new MergeDialog(bench.shell(), place.name(), comparison, rows);
			return switch (dialog.ask()) {
			case MERGE -> {
				Map<String, Side> choices = dialog.choices();
				Job merged = work(() -> JobMerge.of(comparison, choices));
				yield bench.merge(merged, theirs);
			}
			case THEIRS -> {
				bench.take(theirs);
				yield true;
			}
			case COPY -> keepCopy(mine, theirs);
			case NOTHING -> false;
			};
		} catch (IOException e) {
			MessageDialog.openError(bench.shell(), Messages.Meeting_failed, e.getMessage());
			return false;
		}
	}

	/** Mine becomes a job of its own, and the bench shows theirs. */
	private boolean keepCopy(Job mine, Held theirs) throws IOException {
		String note = NLS.bind(Messages.Meeting_copyNote, place.number());
		mine.setNotes(mine.getNotes() == null || mine.getNotes().isBlank() ? note : mine.getNotes() + "\n" + note); //$NON-NLS-1$
		Entry copy = work(() -> {
			try {
				return place.book().takeIn(List.of(mine), true, OrderDesk.person()).get(0);
			} finally {
				StoreWatch.get().changed();
			}
		});
		bench.take(theirs);
		bench.say(NLS.bind(Messages.Meeting_copied, copy.number()));
		OrderDesk.get().refresh();
		return true;
	}

	private static <T> T work(Work<T> work) throws IOException {
		Object[] result = new Object[1];
		try {
			PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> {
				try {
					result[0] = work.run();
				} catch (Exception e) {
					throw new InvocationTargetException(e);
				}
			});
		} catch (InvocationTargetException e) {
			throw new IOException(e.getCause().getMessage(), e.getCause());
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			throw new IOException(e);
		}
		@SuppressWarnings("unchecked")
		T made = (T) result[0];
		return made;
	}
}
