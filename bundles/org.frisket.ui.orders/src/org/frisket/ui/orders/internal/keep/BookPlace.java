package org.frisket.ui.orders.internal.keep;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.orders.Entry;
import org.frisket.orders.JobChangedException;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.StoredJob;
import org.frisket.studio.StudioFolder;
import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.bench.PlacedBench;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.Words;
import org.frisket.ui.studio.StoreWatch;

/**
 * A job of a studio's order book as a bench works on it.
 *
 * @param studio the folder of the studio
 * @param number of the job
 */
record BookPlace(Path studio, long number) implements JobPlace {

	private static final String SEPARATOR = " "; //$NON-NLS-1$

	/** What {@link #key} says; empty if it says no job. */
	static Optional<BookPlace> of(String key) {
		String known = key.startsWith(BookInputFactory.ID + ":") ? key.substring(BookInputFactory.ID.length() + 1) : ""; //$NON-NLS-1$ //$NON-NLS-2$
		int space = known.indexOf(SEPARATOR);
		try {
			return space < 0 ? Optional.empty()
					: Optional.of(new BookPlace(Path.of(known.substring(space + 1)),
					Long.parseLong(known.substring(0, space))));
		} catch (IllegalArgumentException e) {
			// written on another system, or by hand: there is no such job here
			return Optional.empty();
		}
	}

	OrderBook book() {
		return new OrderBook(new StudioFolder(studio));
	}

	@Override
	public String factory() {
		return BookInputFactory.ID;
	}

	@Override
	public String key() {
		return BookInputFactory.ID + ":" + number + SEPARATOR + studio; //$NON-NLS-1$
	}

	@Override
	public String name() {
		Optional<Entry> entry = OrderDesk.get().find(number).filter(each -> !each.title().isBlank());
		return entry.isPresent() ? NLS.bind(Messages.BookPlace_titled, number, entry.get().title())
				: NLS.bind(Messages.BookPlace_name, number);
	}

	@Override
	public String toolTip() {
		return NLS.bind(Messages.BookPlace_toolTip, number, studio);
	}

	@Override
	public Held load() throws IOException {
		try {
			StoredJob stored = book().open(number);
			return new Held(JobFile.toBytes(stored.job()), Long.toString(stored.entry().revision()));
		} catch (OrderException e) {
			throw new IOException(Words.sentence(e.getMessage()), e);
		}
	}

	@Override
	public Held save(byte[] content, String mark) throws IOException {
		Job job = JobFile.load(content, Long.toString(number));
		try {
			Entry entry = book().save(job, Long.parseLong(mark), OrderDesk.person());
			StoreWatch.get().changed();
			return new Held(content, Long.toString(entry.revision()));
		} catch (JobChangedException e) {
			throw new OvertakenException(e.getMessage(), e);
		} catch (OrderException e) {
			throw new IOException(Words.sentence(e.getMessage()), e);
		}
	}

	@Override
	public Runnable watch(PlacedBench bench) {
		BookWatch watch = new BookWatch(this, bench);
		watch.begin();
		return watch::end;
	}

	@Override
	public boolean overtaken(PlacedBench bench, Held theirs) {
		return new Meeting(this, bench).hold(theirs);
	}
}
