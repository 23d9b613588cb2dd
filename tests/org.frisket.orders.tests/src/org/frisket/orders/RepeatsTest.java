package org.frisket.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.Customers;
import org.frisket.studio.StudioFolder;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Jobs that are made again, on both databases. */
class RepeatsTest extends BothDatabases {

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void repeatsKnowTheirOriginals(boolean shared) throws Exception {
		StudioFolder studio = studio(shared);
		OrderBook book = new OrderBook(studio);
		Repeats repeats = new Repeats(studio);
		Entry first = book.add(new NewOrder("Tags", "Tern Bookshop", Optional.empty(), 40, ""), "Ottoline");
		Entry second = repeats.add(book.open(first.number()).job(), first.number(), "Ottoline");
		Entry third = repeats.add(book.open(second.number()).job(), second.number(), "Quill");
		assertEquals(List.of(second.id(), first.id()), book.open(third.number()).job().getRepeats());
		assertEquals(List.of(second.number(), first.number()),
				repeats.originals(third.number()).stream().map(Entry::number).toList());
		assertEquals(List.of(third.number(), second.number()),
				repeats.repeats(first.number()).stream().map(Entry::number).toList());
		assertEquals(List.of(), repeats.repeats(third.number()));
		assertNotEquals(first.id(), third.id());
		assertEquals(1, book.find(first.number()).revision(), "the original is not touched");
		int all = book.list(Long.MAX_VALUE).size();
		assertThrows(OrderException.class, () -> repeats.add(book.open(first.number()).job(), 1_000_000, "Ottoline"));
		assertEquals(all, book.list(Long.MAX_VALUE).size());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void factsAreKeptAndWhoItWasIsForgotten(boolean shared) throws Exception {
		StudioFolder studio = studio(shared);
		long number = new OrderBook(studio).add(new NewOrder("Tags", "Gull Gallery", Optional.empty(), 40, ""), "Ottoline")
				.number();
		Repeats repeats = new Repeats(studio);
		List<Fact> facts = List.of(new Fact(Fact.Subject.CUSTOMER, "", Fact.AGREEMENT, "ten percent off"),
				new Fact(Fact.Subject.CUSTOMER, "", Fact.NAME, "Gull Gallery"),
				new Fact(Fact.Subject.STOCK, "white", "grammage", "216"));
		repeats.keepFacts(number, facts);
		assertEquals(facts, repeats.facts(number));
		Customers customers = new Customers(studio);
		String before = customers.export(customers.find("Gull Gallery"));
		assertTrue(before.contains("ten percent off"), before);
		customers.erase(customers.find("Gull Gallery"), "Ottoline");
		assertEquals(List.of("", "", "216"), repeats.facts(number).stream().map(Fact::text).toList());
		Customer erased = customers.find(new OrderBook(studio).find(number).customer());
		assertTrue(erased.isErased());
		assertFalse(customers.export(erased).contains("ten percent"));
		repeats.keepFacts(number, List.of());
		assertEquals(List.of(), repeats.facts(number));
	}
}
