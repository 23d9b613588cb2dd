package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.frisket.orders.Entry;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.frisket.testkit.PostgresServer;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.place.KeptPasswords;
import org.frisket.ui.orders.internal.place.ServerAddress;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The order book goes to a server and back in the preferences; the password for it is kept, but stands nowhere. */
class PlaceUiTest {

	private static final String PAGE = "org.frisket.ui.orders.place";
	private static final String PASSWORD = "gangway-31";
	private static final String LOCK = "Kept passwords";

	private final Runnable listener = () -> {
		// only has the desk look
	};
	private Path home;
	private PostgresServer server;
	private StudioFolder studio;

	@BeforeEach
	void open() throws Exception {
		home = Files.createTempDirectory("home");
		server = PostgresServer.start(PASSWORD);
		Studio.choose(Optional.of(home.resolve("studio")));
		studio = Studio.folder();
		book().add(new NewOrder("Ferry banner", "Brindle Sound Ferries", Optional.empty(), 1, ""), "Ottoline");
		OrderDesk.get().addListener(listener);
	}

	@AfterEach
	void close() throws IOException {
		OrderDesk.get().removeListener(listener);
		Studio.choose(Optional.empty());
		server.close();
		try (Stream<Path> all = Files.walk(home)) {
			for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(each);
			}
		}
	}

	private OrderBook book() {
		return new OrderBook(studio);
	}

	private static PreferenceDialog page() {
		PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(
				PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), PAGE, new String[] { PAGE }, null);
		dialog.setBlockOnOpen(false);
		dialog.open();
		OpenBench.bringToFront(dialog.getShell());
		return dialog;
	}

	private static PreferencePage shown(PreferenceDialog dialog) {
		return (PreferencePage) dialog.getSelectedPage();
	}

	private static void click(Control control) {
		Screen.click(control, Math.min(20, control.getSize().x / 2), control.getSize().y / 2);
	}

	private static void click(PreferenceDialog dialog, String button) {
		click(Dialogs.button(dialog.getShell(), button));
	}

	private static Button startingWith(PreferenceDialog dialog, String label) {
		return Dialogs.all(shown(dialog).getControl()).filter(Button.class::isInstance).map(Button.class::cast)
				.filter(button -> Dialogs.text(button).startsWith(label)).findFirst().orElseThrow();
	}

	private static void type(Control in, int field, String text) {
		Text into = Dialogs.all(in).filter(Text.class::isInstance).map(Text.class::cast).skip(field).findFirst().orElseThrow();
		click(into);
		Screen.waitUntil("the field listens", into::isFocusControl);
		Screen.key("ctrl+a");
		Screen.type(text);
		Screen.waitUntil("“" + text + "” is typed", () -> into.getText().equals(text));
	}

	private static boolean says(PreferenceDialog dialog, String words) {
		return Dialogs.all(shown(dialog).getControl()).filter(Label.class::isInstance)
				.anyMatch(label -> Dialogs.text(label).contains(words));
	}

	/** Types a word when it is asked for one that locks, which is while the page waits. */
	private static void lockWith(String word) {
		Display.getCurrent().timerExec(50, () -> {
			if (!Dialogs.isOpen(LOCK)) {
				lockWith(word);
				return;
			}
			Control dialog = Dialogs.shell(LOCK);
			OpenBench.bringToFront(dialog.getShell());
			type(dialog, 0, word);
			assertFalse(Dialogs.button(dialog, "Lock with it").isEnabled(), "the second time is missing");
			type(dialog, 1, word);
			try {
				Screen.keepScreen("master-password");
			} catch (IOException e) {
				throw new IllegalStateException(e);
			}
			click(Dialogs.button(dialog, "Lock with it"));
		});
	}

	private static void applied(PreferenceDialog dialog) {
		click(dialog, "Apply and Close");
		Screen.waitUntil("the page is done", () -> dialog.getShell() == null || dialog.getShell().isDisposed());
	}

	private static List<String> titles(List<Entry> jobs) {
		return jobs.stream().map(Entry::title).toList();
	}

	@Test
	void orderBookGoesToAServerAndBack() throws Exception {
		PreferenceDialog dialog = page();
		assertTrue(startingWith(dialog, "In the studio").getSelection());
		click(startingWith(dialog, "On a PostgreSQL"));
		Control page = shown(dialog).getControl();
		type(page, 0, "127.0.0.1:" + server.port());
		assertFalse(Dialogs.button(page, "Try").isEnabled(), "parts are missing");
		type(page, 1, "postgres");
		type(page, 2, "frisket");
		type(page, 3, "wrong");
		click(dialog, "Try");
		Screen.waitUntil("the password is refused", () -> shown(dialog).getErrorMessage() != null
				&& shown(dialog).getErrorMessage().contains("does not accept the user or the password"));
		Screen.keep(Screen.picture(dialog.getShell()), "preferences-place-refused");
		click(dialog, "Apply and Close");
		Screen.waitUntil("it is not taken either", () -> shown(dialog).getErrorMessage() != null);
		assertEquals(Optional.empty(), Databases.address(studio));
		type(page, 3, PASSWORD);
		click(dialog, "Try");
		Screen.waitUntil("it works", () -> says(dialog, "no order book in it yet"));
		Screen.keep(Screen.picture(dialog.getShell()), "preferences-place");
		lockWith("harbour");
		applied(dialog);

		String address = new ServerAddress("127.0.0.1:" + server.port(), "postgres", "frisket", "").text();
		assertEquals(Optional.of(address), Databases.address(studio));
		assertEquals(List.of("Ferry banner"), titles(book().list(10)));
		assertTrue(Files.exists(studio.database()), "it stays where it was");
		KeptPasswords.forgetWhatIsRemembered();
		CompletableFuture<Optional<String>> kept = CompletableFuture.supplyAsync(() -> new KeptPasswords().password(address));
		Screen.waitUntil("the password is unlocked", kept::isDone);
		assertEquals(Optional.of(PASSWORD), kept.get());
		assertStandsNowhere(studio.path());
		assertStandsNowhere(Path.of(Platform.getInstanceLocation().getURL().toURI()).resolve(".metadata/.plugins"));

		book().add(new NewOrder("Place cards", "", Optional.empty(), 40, ""), "Quill");
		Screen.waitUntil("the desk sees the server", () -> OrderDesk.get().jobs().size() == 2);
		PreferenceDialog again = page();
		click(startingWith(again, "In the studio"));
		click(startingWith(again, "Take along"));
		applied(again);
		assertEquals(Optional.empty(), Databases.address(studio));
		Screen.waitUntil("the desk sees the folder, without a start", () -> titles(OrderDesk.get().jobs())
				.equals(List.of("Ferry banner")));
	}

	private static void assertStandsNowhere(Path folder) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			for (Path file : files.filter(Files::isRegularFile).toList()) {
				assertFalse(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).contains(PASSWORD), file.toString());
			}
		}
	}

	@Test
	void addressesAreWhatTheyWereInParts() {
		for (String address : List.of("jdbc:postgresql://studio-pc/orders?user=desk", "jdbc:postgresql://10.0.0.7:5433/a?user=b",
				"jdbc:postgresql://[::1]:5432/caf%C3%A9?user=a%26b%3Dc&ssl=true", "jdbc:example:anything?at=all")) {
			assertEquals(address, ServerAddress.of(address).text());
			assertEquals(Optional.empty(), ServerAddress.of(address).problem(), address);
		}
		assertEquals(new ServerAddress("studio-pc", "orders", "desk", "&ssl=true"),
				ServerAddress.of("jdbc:postgresql://studio-pc/orders?ssl=true&user=desk"));
		for (String wrong : List.of("", "a/b", "a?b", "a&password=c", "desk:secret@host")) {
			assertTrue(new ServerAddress(wrong, "orders", "desk", "").problem().isPresent(), wrong);
		}
	}
}
