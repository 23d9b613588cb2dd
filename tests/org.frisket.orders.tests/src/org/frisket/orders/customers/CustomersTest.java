package org.frisket.orders.customers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.frisket.model.FrisketFactory;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.JobChangedException;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.PaperKind;
import org.frisket.orders.StoredJob;
import org.frisket.studio.StudioFolder;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** Customers on both databases. */
class CustomersTest extends BothDatabases {

	private static Entry order(OrderBook book, String title, String customer) throws Exception {
		return book.add(new NewOrder(title, customer, Optional.empty(), 1, "ask " + customer + " for the colour"), "Ottoline");
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatIsKnownIsKept(boolean shared) throws Exception {
		Customers customers = new Customers(studio(shared));
		Customer added = customers.add(Customer.named(" Kelp & Anchor ").with(CustomerField.MAIL, "office@kelp.example")
				.with(CustomerField.AGREEMENT, "'; DELETE FROM orders_customer; --"));
		assertEquals("Kelp & Anchor", added.name());
		assertEquals(added, customers.find("kelp  &  ANCHOR"));
		assertThrows(OrderException.class, () -> customers.add(Customer.named("KELP & ANCHOR")));
		Customer changed = customers.change(added.with(CustomerField.PHONE, "0555 0100"), "Ottoline");
		assertEquals(2, changed.revision());
		CustomerChangedException told = assertThrows(CustomerChangedException.class,
				() -> customers.change(added.with(CustomerField.NOTES, "late"), "Quill"));
		assertEquals(changed, told.now());
		assertTrue(customers.list().contains(changed));
		assertThrows(IllegalArgumentException.class, () -> changed.with(CustomerField.NAME, " "));
		assertThrows(IllegalArgumentException.class, () -> changed.with(CustomerField.PHONE, "5".repeat(101)));
		assertThrows(OrderException.class, () -> customers.find("Nobody"));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void newNameIsInAllJobs(boolean shared) throws Exception {
		StudioFolder studio = studio(shared);
		OrderBook book = new OrderBook(studio);
		Customers customers = new Customers(studio);
		Entry entry = order(book, "Tags", "Tern Bookshop");
		StoredJob open = book.open(entry.number());
		customers.change(customers.find("Tern Bookshop").with(CustomerField.NAME, "Tern & Gull Books"), "Ottoline");
		assertEquals("Tern & Gull Books", book.find(entry.number()).customer());
		assertTrue(book.find(entry.number()).words().contains("tern & gull books"));
		assertEquals("Tern & Gull Books", book.open(entry.number()).job().getCustomer());
		// whoever had it open would bring the old name back
		assertThrows(JobChangedException.class, () -> book.save(open.job(), open.entry().revision(), "Quill"));
		assertThrows(OrderException.class, () -> customers.find("Tern Bookshop"));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void twoAreMadeOne(boolean shared) throws Exception {
		StudioFolder studio = studio(shared);
		OrderBook book = new OrderBook(studio);
		Customers customers = new Customers(studio);
		Entry one = order(book, "Sign", "Harbour Museum");
		Entry two = order(book, "Labels", "Harbor Museum");
		assertTrue(customers.alike().stream().anyMatch(pair -> pair.one().name().equals("Harbor Museum")
				&& pair.other().name().equals("Harbour Museum") && pair.reason() == LikeCustomers.Reason.NAME));
		Customer from = customers.change(customers.find("Harbor Museum").with(CustomerField.MAIL, "desk@museum.example")
				.with(CustomerField.NOTES, "pays late"), "Ottoline");
		Customer into = customers.change(customers.find("Harbour Museum").with(CustomerField.NOTES, "no gloss"), "Ottoline");
		assertThrows(OrderException.class, () -> customers.merge(into, into, "Ottoline"));
		Customer stays = customers.merge(from, into, "Ottoline");
		assertEquals("desk@museum.example", stays.mail());
		assertEquals("no gloss\npays late", stays.notes());
		assertEquals(List.of(two.number(), one.number()), customers.jobs(stays).stream().map(Entry::number).toList());
		assertEquals("Harbour Museum", book.open(two.number()).job().getCustomer());
		assertThrows(OrderException.class, () -> customers.find("Harbor Museum"));
		assertThrows(OrderException.class, () -> customers.merge(from, stays, "Ottoline"));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void nothingOfAnErasedOneIsLeft(boolean shared) throws Exception {
		StudioFolder studio = studio(shared);
		OrderBook book = new OrderBook(studio);
		Customers customers = new Customers(studio);
		String name = "Wilhelmina Sandlewick";
		Entry entry = order(book, "Cards for wilhelmina  SANDLEWICK", name);
		Entry quiet = order(book, "Menu", name);
		Entry other = order(book, "Menu", "Sandlewick Street School");
		StoredJob host = book.open(other.number());
		Guest guest = FrisketFactory.INSTANCE.createGuest();
		guest.setJob(entry.id());
		guest.setTitle(entry.title());
		host.job().getGuests().add(guest);
		book.save(host.job(), host.entry().revision(), "Ottoline");
		StoredJob open = book.open(quiet.number());
		Jobs.addWording(Jobs.addLayer(open.job(), "Lettering"), "Wilhelmina Sandlewick, 60", 12);
		book.save(open.job(), open.entry().revision(), "Ottoline");
		book.stage(entry.number(), Stage.ORDERED, "Ottoline", "wilhelmina@sandlewick.example said so");
		book.handedOut(entry.number(), PaperKind.PROOF, "Quill", "to Wilhelmina Sandlewick");
		Customer customer = customers.change(customers.find(name).with(CustomerField.MAIL, "wilhelmina@sandlewick.example")
				.with(CustomerField.ADDRESS, "2 Net Loft").with(CustomerField.AGREEMENT, "10 % off"), "Ottoline");
		JsonObject all = JsonParser.parseString(customers.export(customer)).getAsJsonObject();
		assertEquals("2 Net Loft", all.getAsJsonObject("customer").get("address").getAsString());
		assertEquals(2, all.getAsJsonArray("jobs").size());
		String kept = all.toString();
		for (String part : List.of("Cards for", "said so", "Wilhelmina Sandlewick, 60", "10 % off", "for the colour",
				"\"to\":\"ordered\"", "proof")) {
			assertTrue(kept.contains(part), part);
		}
		Erasure erasure = customers.erase(customer, "Ottoline");
		assertTrue(erasure.customer().name().matches("erased customer \\d+"), erasure.customer().name());
		assertEquals(List.of(quiet.number(), entry.number()), erasure.jobs());
		assertEquals(List.of(quiet.number()), erasure.stillNamed());
		for (Entry job : List.of(book.find(entry.number()), book.find(quiet.number()))) {
			assertEquals(erasure.customer().name(), job.customer());
			Job document = book.open(job.number()).job();
			assertEquals(erasure.customer().name(), document.getCustomer());
			if (job.number() == entry.number()) {
				String text = (job + new String(JobFile.toBytes(document), StandardCharsets.UTF_8) + book.papers(job.number()))
						.toLowerCase(Locale.ROOT);
				assertFalse(text.contains("sandlewick"), text);
				assertEquals("Ottoline", document.getHistory().get(0).getWho());
			}
		}
		assertEquals("", erasure.customer().address());
		assertEquals("Sandlewick Street School", book.find(other.number()).customer());
		assertEquals("Cards for " + erasure.customer().name(),
				book.open(other.number()).job().getGuests().get(0).getTitle());
		assertTrue(book.find(other.number()).words().contains("sandlewick street school"));
		// the next one gets another number
		order(book, "More", "Somebody Else");
		assertFalse(customers.erase(customers.find("Somebody Else"), "Ottoline").customer().name()
				.equals(erasure.customer().name()));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void mergedOnesArePartedAsTheyWere(boolean shared) throws Exception {
		StudioFolder studio = studio(shared);
		Customers customers = new Customers(studio);
		OrderBook book = new OrderBook(studio);
		long banner = order(book, "Banner", "Gull Gallery").number();
		long tags = order(book, "Tags", "Gul Gallery").number();
		customers.change(customers.find("Gul Gallery").with(CustomerField.PHONE, "0555 0177"), "Ottoline");
		Merger merger = customers.unite(customers.find("Gul Gallery"), customers.find("Gull Gallery"), "Ottoline");
		assertEquals(List.of(tags), merger.jobs());
		assertEquals("0555 0177", merger.after().phone());
		long later = order(book, "Later", "Gull Gallery").number();
		List<Customer> both = customers.part(merger, "Ottoline");
		assertEquals("Gul Gallery", both.get(0).name());
		assertEquals("", customers.find("Gull Gallery").phone());
		assertEquals(List.of(tags), customers.jobs(both.get(0)).stream().map(Entry::number).toList());
		assertEquals(List.of(later, banner), customers.jobs(both.get(1)).stream().map(Entry::number).toList());
		assertEquals("Gul Gallery", book.open(tags).job().getCustomer());
		assertThrows(CustomerChangedException.class, () -> customers.part(merger, "Ottoline"), "once only");
		assertThrows(OrderException.class, () -> customers.remove(both.get(0)), "it has a job");
		customers.remove(customers.add(Customer.named("Nobody Yet")));
		assertThrows(OrderException.class, () -> customers.find("Nobody Yet"));
	}
}
