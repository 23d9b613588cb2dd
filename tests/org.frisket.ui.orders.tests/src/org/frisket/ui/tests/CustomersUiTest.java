package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.CustomerField;
import org.frisket.orders.customers.Customers;
import org.frisket.studio.store.Databases;
import org.frisket.ui.bench.PlaceInput;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.customers.CustomerDesk;
import org.frisket.ui.orders.internal.customers.CustomerStep;
import org.frisket.ui.orders.internal.customers.CustomersView;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Whom the studio works for, on the screen. */
class CustomersUiTest extends StudioOfOrders {

	private CustomersView view;

	@Override
	void fill() throws Exception {
		OrderBook book = new OrderBook(studio);
		book.add(new NewOrder("Ferry banner", "Tern Bookshop", Optional.empty(), 1, ""), "Ottoline");
		book.add(new NewOrder("Gift tags", "Tern Bokshop", Optional.empty(), 40, ""), "Ottoline");
		Customer kelp = new Customer("", 0, "Kelp & Sons", "Ivo Marrin", "ivo@kelp.example", "", "3 Quay Row", "", "",
				Instant.EPOCH);
		new Customers(studio).add(kelp);
	}

	@BeforeEach
	void open() throws Exception {
		view = show(Orders.CUSTOMERS_ID);
		Screen.waitUntil("all are listed", () -> view.list().getItemCount() == 3);
	}

	private Customer stored(String name) throws Exception {
		return new Customers(studio).find(name);
	}

	private void choose(String name) {
		int index = view.names().indexOf(name);
		var place = view.list().getItem(index).getBounds(0);
		Screen.click(view.list(), place.x + 20, place.y + place.height / 2);
		Screen.waitUntil(name + " is shown", () -> view.field(CustomerField.NAME).getText().equals(name));
		quiet();
	}

	@Test
	void whatIsTypedIsFoundAndKeptAndTakenBack() throws Exception {
		type(view.filter(), "quay ivo");
		assertEquals(List.of("Kelp & Sons"), view.names());
		Text phone = view.field(CustomerField.PHONE);
		type(phone, "0123 456789");
		Screen.key("Return");
		quiet();
		assertEquals("0123 456789", stored("Kelp & Sons").phone());
		Screen.key("ctrl+z");
		quiet();
		assertEquals("", stored("Kelp & Sons").phone());
		assertEquals("", phone.getText());
		Screen.key("ctrl+shift+z");
		quiet();
		assertEquals("0123 456789", phone.getText());
		type(view.filter(), "nobody at all");
		assertEquals(List.of(), view.names());
		assertFalse(phone.isEnabled());
	}

	@Test
	void leavingSomebodyKeepsWhatIsTypedButNotANamelessOne() throws Exception {
		choose("Kelp & Sons");
		type(view.field(CustomerField.MAIL), "new@kelp.example");
		choose("Tern Bookshop");
		assertEquals("new@kelp.example", stored("Kelp & Sons").mail());
		assertEquals(1, view.jobs().getItemCount());
		assertEquals("Ferry banner", view.jobs().getItem(0).getText(2));
		assertEquals("Enquiry", view.jobs().getItem(0).getText(3));
		Text name = view.field(CustomerField.NAME);
		type(name, " ");
		var place = view.list().getItem(0).getBounds(0);
		Screen.click(view.list(), place.x + 20, place.y + place.height / 2);
		assertTrue(view.notice().contains("name"), view.notice());
		assertEquals(" ", name.getText());
	}

	@Test
	void jobIsOpenedFromTheListOfACustomer() throws Exception {
		IPerspectiveDescriptor perspective = page().getPerspective();
		choose("Tern Bookshop");
		Screen.waitUntil("its job is listed", () -> view.jobs().getItemCount() == 1);
		var row = view.jobs().getItem(0).getBounds(2);
		Screen.click(view.jobs(), row.x + 10, row.y + row.height / 2);
		Screen.key("Return");
		try {
			Screen.waitUntil("the job is on the bench", () -> page().getActiveEditor() != null
					&& page().getActiveEditor().getEditorInput() instanceof PlaceInput
					&& page().getActiveEditor().getTitle().contains("Ferry banner"));
		} finally {
			quiet();
			page().closeAllEditors(false);
			page().setPerspective(perspective);
		}
	}

	@Test
	void whatWasDoneIsDoneEvenIfItCannotBeSeenAfterwards() throws Exception {
		List<String> told = new ArrayList<>();
		CustomerDesk.get().change("Add", new CustomerStep() {

			@Override
			public void make(Customers all) throws IOException, OrderException {
				all.add(Customer.named("Cormorant Kitchen"));
				studio.preferences().put(Databases.PREFERENCE, "jdbc:nobody:knows");
			}

			@Override
			public void takeBack(Customers all) {
				throw new IllegalStateException();
			}

			@Override
			public String id() {
				return "its id";
			}
		}, new CustomerDesk.Outcome() {

			@Override
			public void done(String id) {
				told.add(id);
			}

			@Override
			public void overtaken(Customer now) {
				told.add(now.name());
			}

			@Override
			public void refused(String why) {
				told.add(why);
			}
		});
		Screen.waitUntil("something is told", () -> !told.isEmpty());
		studio.preferences().put(Databases.PREFERENCE, "");
		assertEquals(List.of("its id"), told);
		assertEquals("Cormorant Kitchen", stored("Cormorant Kitchen").name());
	}

	@Test
	void twoDesksSeeEachOther() throws Exception {
		choose("Kelp & Sons");
		type(view.field(CustomerField.PHONE), "111");
		Customers elsewhere = new Customers(studio);
		elsewhere.change(stored("Kelp & Sons").with(CustomerField.PHONE, "222"), "Another desk");
		List<String> asked = Dialogs.answer("Take theirs", () -> Screen.key("ctrl+Return"));
		assertTrue(String.join(" ", asked).contains("222"), asked.toString());
		quiet();
		assertEquals("222", view.field(CustomerField.PHONE).getText());
		type(view.field(CustomerField.PHONE), "333");
		elsewhere.change(stored("Kelp & Sons").with(CustomerField.PHONE, "444"), "Another desk");
		Dialogs.answer("Keep what I wrote", () -> Screen.key("ctrl+Return"));
		quiet();
		assertEquals("333", stored("Kelp & Sons").phone());
	}

	@Test
	void thoseWhoLookAlikeAreMergedAndPartedAgain() throws Exception {
		Screen.keepScreen("customers");
		assertTrue(view.alike().getText().contains("Tern Bokshop"), view.alike().getText());
		Screen.click(view.alike(), 30, 8);
		Shell shell = opened("Merge Customers");
		Button merge = Dialogs.button(shell, "Merge");
		assertFalse(merge.isEnabled(), "not before the name is typed");
		Screen.keep(Screen.picture(shell), "customers-merge");
		String gone = "Tern Bokshop";
		String stays = "Tern Bookshop";
		assertTrue(read(shell).contains("Type “" + gone + "” to go on:"), read(shell).toString());
		Screen.type(gone);
		Screen.waitUntil("it may be done", merge::isEnabled);
		Screen.key("Return");
		Screen.waitUntil("there is one less", () -> view.list().getItemCount() == 2);
		quiet();
		assertEquals(2, new Customers(studio).jobs(stored(stays)).size());
		Screen.key("ctrl+z");
		Screen.waitUntil("both are there again", () -> view.list().getItemCount() == 3);
		assertEquals(1, new Customers(studio).jobs(stored(stays)).size());
		assertEquals(1, new Customers(studio).jobs(stored(gone)).size());
	}

	@Test
	void erasingSaysWhatStaysAndAsksForTheName() throws Exception {
		choose("Tern Bookshop");
		Screen.events("key", "ctrl+b", "x");
		Shell shell = opened("Erase Customer");
		String said = String.join("\n", read(shell));
		assertTrue(said.contains("Stays for the books") && said.contains("Backups that were made before") && said.contains("cannot be undone"), said);
		Button erase = Dialogs.button(shell, "Erase");
		assertFalse(erase.isEnabled());
		Screen.keep(Screen.picture(shell), "customers-erase");
		Screen.type("tern bookshop");
		Screen.waitUntil("it may be done", erase::isEnabled);
		Screen.key("Return");
		Screen.waitUntil("the name is gone", () -> !view.names().contains("Tern Bookshop"));
		assertTrue(view.names().stream().anyMatch(name -> name.startsWith("erased customer")), view.names().toString());
		assertTrue(new OrderBook(studio).find(1).customer().startsWith("erased customer"));
	}
}
