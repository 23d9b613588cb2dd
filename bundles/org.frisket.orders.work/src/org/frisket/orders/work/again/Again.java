package org.frisket.orders.work.again;

import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.orders.Entry;
import org.frisket.orders.Fact;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.Repeats;
import org.frisket.orders.StoredJob;
import org.frisket.orders.customers.Customer;
import org.frisket.prepare.fonts.JobFonts;
import org.frisket.studio.StudioFolder;
import org.frisket.typography.source.FontLibrary;

/**
 * Makes a job of the order book again: a copy of it as an order of its own, which is cut from the same outlines with the
 * settings that worked, and a list of what has changed in the studio since. The original is not touched. Fonts are read and
 * the studio's database is opened, so it is none for the screen's thread.
 */
public final class Again {

	private final StudioFolder studio;
	private final FontLibrary fonts;
	private final Clock clock;

	/** @param fonts at hand, those that the studio keeps among them */
	public Again(StudioFolder studio, FontLibrary fonts) {
		this(studio, fonts, Clock.systemUTC());
	}

	/** @param clock tells the time of changes */
	public Again(StudioFolder studio, FontLibrary fonts, Clock clock) {
		this.studio = studio;
		this.fonts = fonts;
		this.clock = clock;
	}

	/** What would be otherwise if a job were made again, the gravest first; nothing is ordered. */
	public List<Note> study(long number, Wish wish) throws IOException, OrderException {
		return study(new OrderBook(studio, clock).open(number), wish).notes();
	}

	/**
	 * Orders a job again.
	 *
	 * @throws OrderException if there is no such job, or it cannot be read
	 */
	public Repeat order(long number, Wish wish, String person) throws IOException, OrderException {
		StoredJob original = new OrderBook(studio, clock).open(number);
		Copy copy = study(original, wish);
		// as long as a font of then is anywhere at hand, it is kept from now on
		JobFonts.keep(copy.job(), fonts, studio);
		Entry order = new Repeats(studio, clock).add(copy.job(), number, person);
		return new Repeat(original.entry(), order, copy.notes());
	}

	private Copy study(StoredJob original, Wish wish) throws IOException, OrderException {
		DeskState desk = SettingsDesk.look(studio);
		List<Fact> facts = facts(original);
		Optional<Customer> customer = MadeWith.customer(studio, original.entry());
		Copy copy = new Copy(original.job(), wish);
		copy.notes().addAll(new FontNotes(studio, fonts).of(original.job()));
		copy.notes().addAll(new StudioNotes(original.job(), desk, facts).notes());
		copy.notes().addAll(CustomerNotes.of(original.entry(), customer, facts));
		copy.prove(MadeWith.runs(original.job(), desk), desk);
		copy.notes().sort(Comparator.comparing(Note::severity));
		return copy;
	}

	/** Of the job, else of the latest of those it is a repeat of that knows. */
	private List<Fact> facts(StoredJob original) throws IOException, OrderException {
		Repeats repeats = new Repeats(studio, clock);
		List<Long> numbers = new ArrayList<>(List.of(original.entry().number()));
		repeats.originals(original.entry().number()).forEach(entry -> numbers.add(entry.number()));
		for (long number : numbers) {
			List<Fact> facts = repeats.facts(number);
			if (!facts.isEmpty()) {
				return facts;
			}
		}
		return List.of();
	}
}
