package org.frisket.ui.orders.internal.keep;

import java.io.IOException;
import java.text.DateFormat;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderException;
import org.frisket.orders.StoredJob;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.JobPlace.Held;
import org.frisket.ui.bench.PlacedBench;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreJob;

/**
 * Notices that another desk has saved the job of a bench. Where nothing was changed on the bench, what the other has
 * saved is shown at once; else it is said above the bench, with what can be done.
 */
final class BookWatch {

	/** The mark of no revision. */
	private static final String NONE = "0"; //$NON-NLS-1$

	private final BookPlace place;
	private final PlacedBench bench;
	private final Runnable look = this::look;
	private final Runnable replaced = this::verify;
	/** The revision that was told, so that it is told once; 0 for none. */
	private long told;

	BookWatch(BookPlace place, PlacedBench bench) {
		this.place = place;
		this.bench = bench;
	}

	void begin() {
		OrderDesk.get().addListener(look);
		OrderDesk.get().whenReplaced(replaced);
	}

	void end() {
		OrderDesk.get().removeListener(look);
		OrderDesk.get().forgetWhenReplaced(replaced);
	}

	private void look() {
		Optional<Entry> entry = place.studio().equals(Studio.folder().path()) ? OrderDesk.get().find(place.number())
				: Optional.empty();
		if (entry.isEmpty() || bench.isClosed() || bench.isSaving()) {
			return;
		}
		long now = entry.get().revision();
		long here = Long.parseLong(bench.mark());
		if (now == here || now == told) {
			return;
		}
		told = now;
		if (now < here) {
			// the desk has not seen yet what was saved here, or another desk has brought back a backup
			verify();
			return;
		}
		if (bench.isDirty()) {
			bench.tell(NLS.bind(Messages.BookWatch_both, who(entry.get()), when(entry.get())),
					List.of(new PlacedBench.Choice(Messages.BookWatch_compare, () -> load(this::compare)),
							new PlacedBench.Choice(Messages.BookWatch_take, () -> load(this::take))));
		} else {
			load(held -> {
				// something may have been typed meanwhile
				if (bench.isDirty()) {
					told = 0;
					look();
				} else {
					take(held);
					bench.say(NLS.bind(Messages.BookWatch_taken, who(entry.get()), when(entry.get())));
				}
			});
		}
	}

	/** The book may be another one by now: what it has is shown, and what is not saved stays. */
	private void verify() {
		if (bench.isClosed() || !place.studio().equals(Studio.folder().path())) {
			return;
		}
		try {
			String id = bench.job().getId();
			new StoreJob<>(NLS.bind(Messages.BookWatch_reading, place.number()), () -> stillThere(id), there -> {
				if (!bench.isClosed()) {
					there.ifPresentOrElse(this::compareReplaced, this::gone);
				}
			}, this::refused).schedule();
		} catch (IOException e) {
			refused(e.getMessage());
		}
	}

	/** Empty if there is no such job, or another one has its number. */
	private Optional<Held> stillThere(String id) throws IOException, OrderException {
		StoredJob stored = place.book().open(List.of(id)).get(id);
		return stored == null || stored.entry().number() != place.number() ? Optional.empty() : Optional.of(place.load());
	}

	private void compareReplaced(Held held) {
		if (bench.isSaving() || held.mark().equals(bench.mark()) && Arrays.equals(held.content(), bench.base())) {
			return;
		}
		if (bench.isDirty()) {
			stand();
			bench.tell(Messages.BookWatch_restoredBoth,
					List.of(new PlacedBench.Choice(Messages.BookWatch_compare, () -> load(this::compare)),
							new PlacedBench.Choice(Messages.BookWatch_takeRestored, () -> load(this::take))));
		} else {
			take(held);
			bench.say(Messages.BookWatch_restored);
		}
	}

	private void gone() {
		stand();
		bench.tell(Messages.BookWatch_gone,
				List.of(new PlacedBench.Choice(Messages.BookWatch_saveAs, () -> bench.saveAs())));
	}

	/** Revisions of a book that was replaced may be the same by chance: none that is held is the one that was taken out. */
	private void stand() {
		bench.keepDespite(NONE);
	}

	private static String who(Entry entry) {
		return entry.changedBy().isBlank() ? Messages.BookWatch_somebody : entry.changedBy();
	}

	private static String when(Entry entry) {
		return DateFormat.getDateTimeInstance(DateFormat.SHORT, DateFormat.SHORT).format(Date.from(entry.changed()));
	}

	private void load(Consumer<Held> then) {
		new StoreJob<>(NLS.bind(Messages.BookWatch_reading, place.number()), place::load, held -> {
			if (!bench.isClosed()) {
				then.accept(held);
			}
		}, this::refused).schedule();
	}

	private void refused(String reason) {
		if (!bench.isClosed()) {
			told = 0;
			bench.tell(reason, List.of(new PlacedBench.Choice(Messages.BookWatch_again, look)));
		}
	}

	private void compare(Held held) {
		if (!new Meeting(place, bench).hold(held)) {
			// the question stays open
			told = 0;
			look();
		}
	}

	private void take(Held held) {
		try {
			bench.take(held);
		} catch (IOException e) {
			refused(e.getMessage());
		}
	}
}
