package org.frisket.ui.tests;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.frisket.material.Price;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.StockShelf;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Sheet;
import org.frisket.orders.Entry;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.CustomerField;
import org.frisket.orders.customers.Customers;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Store;
import org.frisket.ui.bench.StudioChoice;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.Person;
import org.frisket.ui.orders.internal.docket.DocketView;
import org.frisket.ui.orders.internal.week.WeekStrip;
import org.frisket.ui.orders.internal.week.WeekView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/** The order desk of a studio that is there for one test only, on a Wednesday of March 2027. */
abstract class OpenDocket {

	protected static final LocalDate WEDNESDAY = LocalDate.of(2027, 3, 3);

	protected Path home;

	@BeforeEach
	void openStudio() throws Exception {
		OpenBench.bringToFront(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell());
		home = Files.createTempDirectory("studio");
		InstanceScope.INSTANCE.getNode(StudioChoice.NODE).put(StudioChoice.KEY, home.resolve("own").toString());
		StudioChoice.apply();
		Studio.folder().openForWriting();
		try (Store store = Store.open(Studio.folder(), StockShelf.AREA)) {
			new StockShelf(store).add(Stock.named("Harbour blue").id("harbour-blue").family(StockFamily.CARD)
					.grammage(new BigDecimal(216)).price(new BigDecimal("0.45"))
					.currency(Price.currency("EUR")).build());
		}
	}

	@AfterEach
	void closeStudio() throws Exception {
		Screen.letGo();
		Arrays.stream(Display.getCurrent().getShells()).filter(each -> !each.isDisposed() && each.getData() instanceof Dialog)
				.filter(each -> each.getParent() != null).forEach(Shell::close);
		page().closeAllEditors(false);
		PlatformUI.getWorkbench().showPerspective(Orders.BENCH_PERSPECTIVE_ID, page().getWorkbenchWindow());
		InstanceScope.INSTANCE.getNode(Person.NODE).remove(Person.KEY);
		InstanceScope.INSTANCE.getNode(StudioChoice.NODE).remove(StudioChoice.KEY);
		StudioChoice.apply();
		Screen.settle();
		try (Stream<Path> all = Files.walk(home)) {
			for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
				Files.deleteIfExists(each);
			}
		} catch (DirectoryNotEmptyException closing) {
			// what the store leaves when it is closed
		}
	}

	static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
	}

	static OrderBook book() {
		return OrderDesk.book();
	}

	/** Two gift tags on one sheet, due on a Thursday. */
	protected static Entry tags() throws Exception {
		Job job = Jobs.create(UUID.randomUUID().toString(), "Gift tags for the harbour fair");
		job.setCustomer("Tern Bookshop");
		job.setDue(LocalDate.of(2027, 3, 4));
		job.setQuantity(2);
		job.setNotes("Thread them with blue ribbon.");
		Layer layer = Jobs.addLayer(job, "Harbour blue");
		layer.setColour("#2a4d8f");
		layer.setStock("harbour-blue");
		Outline tag = Jobs.addOutline(layer, "M0 0H80V50H0Z");
		tag.setName("Tag");
		Jobs.addOperation(tag, OperationKind.CUT);
		Sheet sheet = Jobs.addSheet(job, "harbour-blue", 200, 200);
		Jobs.addPlacement(sheet, tag.getId(), 60, 60, 0);
		Jobs.addPlacement(sheet, tag.getId(), 60, 130, 0);
		return book().takeIn(job, "Ottoline");
	}

	protected static Entry order(String title, String customer, LocalDate due) throws Exception {
		return book().add(new NewOrder(title, customer, Optional.ofNullable(due), 1, ""), "Ottoline");
	}

	protected static void agree(String name, String agreement) throws Exception {
		new Customers(Studio.folder()).add(Customer.named(name).with(CustomerField.AGREEMENT, agreement));
	}

	/** Goes to the order desk by its key, and waits until it shows so many jobs. */
	protected static WeekStrip desk(int jobs) throws Exception {
		OrderDesk.get().refresh();
		OpenBench.bringToFront(page().getWorkbenchWindow().getShell());
		Screen.key("ctrl+shift+o");
		Screen.waitUntil("it is the order desk", () -> page().getPerspective().getId().equals(Orders.DESK_PERSPECTIVE_ID));
		WeekView week = (WeekView) page().showView(Orders.WEEK_ID);
		week.showWeekOf(WEDNESDAY);
		Screen.waitUntil(jobs + " jobs are due", () -> week.strip().plan().size() == jobs);
		Screen.settle();
		return week.strip();
	}

	protected static DocketView docket() {
		return (DocketView) page().findView(Orders.DOCKET_ID);
	}

	/** All that is said on the docket. */
	protected static List<String> words() {
		return Dialogs.all(docket().page()).map(Dialogs::text).filter(text -> !text.isEmpty()).toList();
	}

	protected static void assertSaid(String part) {
		if (words().stream().noneMatch(text -> text.contains(part))) {
			throw new AssertionError("“" + part + "” is not among " + words());
		}
	}

	protected static void click(WeekStrip strip, Entry entry) {
		var box = strip.boundsOf(strip.plan().find(entry.number()).orElseThrow());
		Screen.click(strip, box.x + box.width / 2, box.y + box.height / 2);
	}

	protected static void whole(Entry entry) {
		Screen.waitUntil("the docket is whole", () -> docket().isWhole()
				&& docket().entry().filter(shown -> shown.number() == entry.number()).isPresent());
		Screen.settle();
	}

	protected static boolean isThere(Path file) {
		try {
			return Files.size(file) > 0;
		} catch (IOException e) {
			return false;
		}
	}
}
