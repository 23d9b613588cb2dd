package org.frisket.orders.desk;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.studio.NameKey;

/** Rows of an order book drawn by lot from a seed. */
final class SampleEntries {

	static final LocalDate TODAY = LocalDate.of(2026, 11, 30);
	static final BookNames NAMES = new BookNames() {

		@Override
		public String stage(Stage stage) {
			return "at " + stage.getLiteral();
		}

		@Override
		public String stock(String id) {
			return id.equals("card") ? "Harbour Card" : id;
		}
	};

	private static final String[] THINGS = { "Place cards", "gift tags", "Ferry banner", "Übersee-Schild", "alphabet", "Öse", "Ofen" };
	private static final String[] CUSTOMERS = { "", "Odila Quern", "ostley ferry", "Ärmel & Co", "Wenzel Brook" };
	private static final String[] STOCKS = { "", "card", "paper", "card film", "film" };

	private SampleEntries() {
	}

	/** The latest number first. */
	static List<Entry> of(int count, long seed) {
		Random random = new Random(seed);
		List<Entry> entries = new ArrayList<>();
		for (int number = count; number > 0; number--) {
			String title = pick(THINGS, random) + ' ' + random.nextInt(9);
			String customer = pick(CUSTOMERS, random);
			Stage stage = Stage.values()[random.nextInt(Stage.values().length)];
			Optional<LocalDate> due = random.nextInt(5) == 0 ? Optional.empty()
					: Optional.of(TODAY.plusDays(random.nextInt(40) - 20));
			entries.add(new Entry("id" + number, number, 1 + random.nextInt(3), title, customer, stage, Instant.EPOCH, due,
					1 + random.nextInt(5), pick(STOCKS, random), NameKey.of(title + ' ' + customer), Instant.EPOCH.plusSeconds(number),
					"desk"));
		}
		return entries;
	}

	private static String pick(String[] from, Random random) {
		return from[random.nextInt(from.length)];
	}
}
