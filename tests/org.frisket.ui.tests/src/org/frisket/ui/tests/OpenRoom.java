package org.frisket.ui.tests;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.StockShelf;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Store;
import org.frisket.ui.bench.StudioChoice;
import org.frisket.ui.material.internal.machines.FieldNote;
import org.frisket.ui.material.internal.machines.StudioDesk;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/** The workbench with a studio folder that is made for the test. */
abstract class OpenRoom {

	protected Path home;

	@BeforeEach
	void openStudio() throws Exception {
		OpenBench.bringToFront(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell());
		home = Files.createTempDirectory("studio");
		InstanceScope.INSTANCE.getNode(StudioChoice.NODE).put(StudioChoice.KEY, home.resolve("own").toString());
		StudioChoice.apply();
		StudioDesk.get().refresh();
		Screen.waitUntil("the studio is read", StudioDesk.get()::isQuiet);
	}

	@AfterEach
	void closeStudio() throws IOException {
		page().closeAllEditors(false);
		Screen.waitUntil("nothing is kept any more", StudioDesk.get()::isQuiet);
		InstanceScope.INSTANCE.getNode(StudioChoice.NODE).remove(StudioChoice.KEY);
		StudioChoice.apply();
		try (Stream<Path> all = Files.walk(home)) {
			for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(each);
			}
		}
	}

	static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}

	/** A stock on the shelf: white card of 216 g/m². */
	static void shelve() throws Exception {
		try (Store store = Store.open(Studio.folder(), StockShelf.AREA)) {
			new StockShelf(store).add(Stock.named("Harbour white").family(StockFamily.CARD).grammage(new BigDecimal(216))
					.build());
		}
		// or the desk hears of it at any moment of the test, and runs are worked out anew
		StudioDesk.get().refresh();
		Screen.waitUntil("the desk knows of it", StudioDesk.get()::isQuiet);
	}

	/** What is in the store, read anew. */
	static DeskState stored() throws IOException {
		return SettingsDesk.look(Studio.folder());
	}

	static Control field(Control in, String name) {
		List<Control> found = Dialogs.all(in).filter(control -> name.equals(control.getData(FieldNote.NAME))).toList();
		if (found.size() != 1) {
			throw new AssertionError(found.size() + " fields “" + name + "”");
		}
		return found.get(0);
	}

	static void click(Control control) {
		Screen.click(control, control.getSize().x / 2, control.getSize().y / 2);
	}

	/** Types into a field as a person does; the old text is typed over. */
	static void type(Control in, String name, String text) {
		Text field = (Text) field(in, name);
		click(field);
		Screen.waitUntil("the field listens: " + name, field::isFocusControl);
		Screen.key("ctrl+a");
		if (text.isEmpty()) {
			Screen.key("Delete");
		} else {
			Screen.type(text);
		}
		Screen.waitUntil("it is typed: " + text, () -> field.getText().equals(text));
	}

	/** Chooses an entry of a list by the keyboard. */
	static void choose(Control in, String name, String entry) {
		Combo combo = (Combo) field(in, name);
		combo.select(combo.indexOf(entry));
		combo.notifyListeners(org.eclipse.swt.SWT.Selection, new org.eclipse.swt.widgets.Event());
		Screen.settle();
	}
}
