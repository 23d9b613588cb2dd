package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.StockShelf;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.Repeats;
import org.frisket.orders.work.again.MadeWith;
import org.frisket.studio.store.Store;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.again.AgainDialog;
import org.frisket.ui.orders.internal.customers.CustomersView;
import org.junit.jupiter.api.Test;

/** A job is ordered again from wherever it is selected. */
class AgainUiTest extends StudioOfOrders {

	@Override
	void fill() throws Exception {
		try (Store store = Store.open(studio, StockShelf.AREA)) {
			StockShelf shelf = new StockShelf(store);
			shelf.add(Stock.named("Harbour white").family(StockFamily.CARD).grammage(new BigDecimal(216)).build());
		}
		Job job = Jobs.create("tags", "Gift tags");
		job.setCustomer("Tern Bookshop");
		job.setQuantity(40);
		Jobs.addLayer(job, "Card").setStock("harbour-white");
		new OrderBook(studio).takeIn(job, "Ottoline");
		MadeWith.keep(studio, 1);
		try (Store store = Store.open(studio, StockShelf.AREA)) {
			StockShelf shelf = new StockShelf(store);
			var there = shelf.list().get(0);
			shelf.change(there.stock().change().grammage(new BigDecimal(240)).build(), there.revision());
		}
	}

	@Test
	void dayAndNumberAreAskedForAndWhatChangedIsShown() throws Exception {
		CustomersView view = show(Orders.CUSTOMERS_ID);
		Screen.waitUntil("the job is listed", () -> view.jobs().getItemCount() == 1);
		var row = view.jobs().getItem(0).getBounds(2);
		Screen.click(view.jobs(), row.x + 10, row.y + row.height / 2);
		Screen.waitUntil("the job is selected", () -> view.jobs().getSelectionCount() == 1
				&& !view.getSite().getSelectionProvider().getSelection().isEmpty());
		waitUntilOffered("org.frisket.ui.orders.command.again");
		Screen.key("ctrl+shift+a");
		Shell shell = opened("Order Again");
		AgainDialog dialog = (AgainDialog) shell.getData();
		Screen.waitUntil("it is known what changed", dialog::isKnown);
		assertEquals(1, dialog.notes().size(), dialog.notes().toString());
		assertTrue(dialog.notes().get(0).contains("216 g/m²") && dialog.notes().get(0).contains("240 g/m²"),
				dialog.notes().toString());
		Screen.keep(Screen.picture(shell), "order-again");
		Text due = field(shell, "Due");
		type(due, "soon");
		assertFalse(Dialogs.button(shell, "Order").isEnabled());
		type(due, "+90");
		assertTrue(Dialogs.button(shell, "Order").isEnabled());
		type(due, "2031-06-01");
		type(field(shell, "Copies"), "25");
		Screen.key("Return");
		Screen.waitUntil("it is ordered", () -> !Dialogs.isOpen("Order Again"));
		quiet();
		Entry order = new OrderBook(studio).find(2);
		assertEquals(Optional.of(LocalDate.of(2031, 6, 1)), order.due());
		assertEquals(25, order.quantity());
		assertEquals(1, new Repeats(studio).originals(2).get(0).number());
		assertEquals(40, new OrderBook(studio).find(1).quantity());
		var selected = (org.eclipse.jface.viewers.IStructuredSelection) view.getSite().getSelectionProvider().getSelection();
		assertEquals(order.id(), ((Entry) selected.getFirstElement()).id());
	}

	private static Text field(Shell shell, String label) {
		return Dialogs.all(shell).filter(Text.class::isInstance).map(Text.class::cast)
				.filter(text -> label.equals(text.getData())).findFirst().orElseThrow();
	}
}
