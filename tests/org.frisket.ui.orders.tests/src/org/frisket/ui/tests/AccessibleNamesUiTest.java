package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.eclipse.ui.handlers.IHandlerService;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.orders.desk.SampleStudio;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.Person;
import org.frisket.ui.orders.internal.docket.DocketView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Everything at the order desk has a name for those who cannot see it; and the desk knows the name of who sits there. */
class AccessibleNamesUiTest extends StudioOfOrders {

	private static final String PERSON_PAGE = "org.frisket.ui.orders.person";

	@Override
	void fill() throws Exception {
		SampleStudio.fill(new OrderBook(studio), LocalDate.now(), "other desk");
	}

	@AfterEach
	void nobody() {
		InstanceScope.INSTANCE.getNode(Person.NODE).remove(Person.KEY);
	}

	/** All of a view, as it hangs on its tab. */
	private static Control content(IViewPart view) {
		return Dialogs.all(view.getSite().getShell()).filter(CTabFolder.class::isInstance).map(CTabFolder.class::cast)
				.map(CTabFolder::getSelection).filter(tab -> tab != null && tab.getText().equals(view.getTitle()))
				.map(CTabItem::getControl).findFirst().orElseThrow();
	}

	@Test
	void everythingInAViewHasAName() throws Exception {
		named(Orders.BOOK_ID, 4);
		named(Orders.CUSTOMERS_ID, 9);
		named(Orders.TODAY_ID, 3);
		named(Orders.REPORTS_ID, 3);
		named(Orders.WEEK_ID, 1);
		named(Orders.DOCKET_ID, 6);
	}

	/** @param atLeast so many controls are met in it */
	private static void named(String id, int atLeast) throws Exception {
		IViewPart view = show(id);
		Screen.waitUntil("the jobs are seen", () -> OrderDesk.get().jobs().size() == 12);
		if (view instanceof DocketView docket) {
			docket.show(OrderDesk.get().jobs().get(0));
			Screen.waitUntil("the docket is whole", docket::isWhole);
		}
		quiet();
		Control content = content(view);
		assertTrue(AccessibleNames.assertAllNamed(content) >= atLeast,
				id + ": " + Dialogs.all(content).map(each -> each.getClass().getSimpleName()).toList());
		Screen.keepScreen("named-" + id.substring(id.lastIndexOf('.') + 1));
	}

	@Test
	void fieldsOfANewOrderHaveNames() throws Exception {
		show(Orders.BOOK_ID);
		PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("org.frisket.ui.orders.command.book.order",
				null);
		Shell dialog = opened("New Order");
		assertTrue(AccessibleNames.assertAllNamed(dialog) >= 7);
		dialog.close();
	}

	private static PreferenceDialog preferences(String page) {
		PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(
				PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), page, new String[] { page }, null);
		dialog.setBlockOnOpen(false);
		dialog.open();
		OpenBench.bringToFront(dialog.getShell());
		return dialog;
	}

	private static Control page(PreferenceDialog dialog) {
		return ((PreferencePage) dialog.getSelectedPage()).getControl();
	}

	@Test
	void everythingOnAPageOfPreferencesHasAName() {
		for (String id : List.of(PERSON_PAGE, "org.frisket.ui.orders.place", "org.frisket.ui.orders.preferences.quotes")) {
			PreferenceDialog dialog = preferences(id);
			AccessibleNames.assertAllNamed(page(dialog));
			dialog.close();
		}
	}

	private static void name(String typed) {
		PreferenceDialog dialog = preferences(PERSON_PAGE);
		Text field = Dialogs.all(page(dialog)).filter(Text.class::isInstance).map(Text.class::cast).findFirst().orElseThrow();
		Screen.waitUntil("the field listens", () -> field.isFocusControl() || field.setFocus());
		Screen.key("ctrl+a");
		Screen.key("Delete");
		if (!typed.isEmpty()) {
			Screen.type(typed);
		}
		Screen.waitUntil("“" + typed + "” is typed", () -> field.getText().equals(typed));
		press(dialog, "Apply and Close");
		Screen.waitUntil("the page is done", () -> dialog.getShell() == null || dialog.getShell().isDisposed());
	}

	private static void press(PreferenceDialog dialog, String button) {
		Control found = Dialogs.button(dialog.getShell(), button);
		Screen.click(found, found.getSize().x / 2, found.getSize().y / 2);
	}

	@Test
	void nameThatIsTypedStandsInTheHistoryUntilItIsTakenAway() throws Exception {
		String computer = Person.ofComputer();
		assertEquals(computer, OrderDesk.person());
		name("Ottoline of the desk ");
		assertEquals("Ottoline of the desk", OrderDesk.person());
		long number = new OrderBook(studio).add(new NewOrder("Banner", "", Optional.empty(), 1, ""), OrderDesk.person())
				.number();
		assertEquals("Ottoline of the desk", new OrderBook(studio).find(number).changedBy());
		PreferenceDialog dialog = preferences(PERSON_PAGE);
		Text field = Dialogs.all(page(dialog)).filter(Text.class::isInstance).map(Text.class::cast).findFirst().orElseThrow();
		assertEquals(100, field.getTextLimit());
		assertEquals(computer, field.getMessage());
		assertEquals("Your name", AccessibleNames.of(field));
		assertTrue(read(dialog.getShell()).stream().anyMatch(text -> text.contains("calls you: " + computer)));
		Screen.keep(Screen.picture(dialog.getShell()), "preferences-person");
		press(dialog, "Cancel");
		name("");
		assertEquals(computer, OrderDesk.person());
	}
}
