package org.frisket.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.model.JobFile;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.Customers;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.archive.StudioArchive;
import org.frisket.studio.store.Databases;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever people type is kept as it is, or is refused with a reason; it is never taken for anything else. */
class HostileTextTest extends BothDatabases {

	private static final List<String> KEPT = List.of("'); DROP TABLE orders_job; --", "\"quoted\" \\ `back` $1 ? :name {0} %s",
			"\u202Eright to left\u202C \u05E9\u05DC\u05D5\u05DD \u0645\u0631\u062D\u0628\u0627", "\uD83D\uDEA2\uD83C\uDFF4 beyond the basic plane",
			"<b>&amp;</b>]]>", "a\u0301\u0327 combined", "\uFEFFmark \uFFFD", "../../etc/passwd", "=1+2;@SUM(A1)", "x".repeat(190));
	private static final List<String> REFUSED = List.of("nul \u0000 inside", "half \uD83D", "\uDEA2 half", "bell \u0007");

	private static StudioArchive archive(StudioFolder studio) {
		return new StudioArchive(studio, List.of(OrderBook.AREA));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void textsAreKeptAsTheyAreThroughFilesAndBackups(boolean shared) throws Exception {
		StudioFolder studio = studio(shared);
		OrderBook book = new OrderBook(studio);
		List<Long> numbers = new ArrayList<>();
		for (String text : KEPT) {
			long number = book.add(new NewOrder(text, text, Optional.empty(), 1, text), text).number();
			numbers.add(number);
			book.stage(number, org.frisket.model.Stage.ORDERED, text, text);
			book.handedOut(number, PaperKind.PROOF, text, text);
		}
		Path backup = home.resolve("backup.zip");
		archive(studio).write(backup);
		archive(studio).restore(backup, true);
		Databases.choose(Optional.empty());
		StudioFolder other = new StudioFolder(home.resolve("other"));
		archive(other).restore(backup, false);
		for (StudioFolder each : List.of(studio(shared), other)) {
			if (each.equals(other)) {
				Databases.choose(Optional.empty());
			}
			for (int i = 0; i < KEPT.size(); i++) {
				assertIs(KEPT.get(i), new OrderBook(each), numbers.get(i));
			}
			List<String> names = new Customers(each).list().stream().map(Customer::name).toList();
			assertTrue(names.containsAll(KEPT.stream().map(String::strip).toList()), names.toString());
		}
	}

	private void assertIs(String text, OrderBook book, long number) throws Exception {
		Entry entry = book.find(number);
		assertEquals(text, entry.title());
		assertEquals(text, entry.customer());
		assertEquals(text, book.history(number).get(0).getRemark());
		assertEquals(text, book.history(number).get(0).getWho());
		assertEquals(text, book.papers(number).get(0).remark());
		Path file = home.resolve("job.frjob");
		JobFile.save(book.open(number).job(), file);
		assertEquals(text, JobFile.load(file).getTitle());
		assertEquals(text, JobFile.load(file).getNotes());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatNoFileKeepsIsRefusedWithAReason(boolean shared) throws Exception {
		StudioFolder studio = studio(shared);
		OrderBook book = new OrderBook(studio);
		long number = book.add(new NewOrder("Card", "", Optional.empty(), 1, ""), "Ottoline").number();
		for (String text : REFUSED) {
			int before = book.list(100).size();
			Exception refused = assertThrows(Exception.class,
					() -> book.add(new NewOrder(text, "", Optional.empty(), 1, ""), "Ottoline"));
			assertFalse(refused instanceof RuntimeException, refused.toString());
			assertTrue(refused.getMessage().contains("U+"), refused.getMessage());
			assertEquals(before, book.list(100).size());
			if (!text.contains("bell")) {
				// these go into the tables alone
				refused = assertThrows(Exception.class, () -> book.handedOut(number, PaperKind.PROOF, "Ottoline", text));
				assertTrue(refused.getMessage().contains("cannot be kept"), refused.getMessage());
				refused = assertThrows(Exception.class, () -> new Customers(studio).add(Customer.named(text)));
				assertTrue(refused.getMessage().contains("cannot be kept"), refused.getMessage());
			}
		}
		assertEquals(List.of(), book.papers(number));
	}
}
