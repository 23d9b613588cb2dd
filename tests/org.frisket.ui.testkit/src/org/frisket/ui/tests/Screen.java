package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/** The screen as a person meets it: pixels that can be seen, a pointer and keys that go through the window system. */
final class Screen {

	/** Long enough for the slowest machine; a test that waits for it has failed already. */
	private static final long LIMIT_MS = 60_000;
	private static final int TURN_MS = 5;
	private static final int ANSWER_MS = 1;
	private static final int SETTLE_MS = 10;
	/** More than there are, as what moves by itself never lets it be quiet. */
	private static final int SETTLE_ROUNDS = 8;
	/** Together longer than from one frame to the next: what was to be painted has been. */
	private static final int QUIET_ROUNDS = 2;
	private static final Display DISPLAY = Display.getCurrent();
	private static final Arrivals ARRIVALS = new Arrivals(DISPLAY);

	/** How far from each other the clicks of a double click may be, and a bit. */
	private static final int NEAR_PX = 8;

	private static boolean pressed;
	/** Where the button was pressed last, null for nowhere yet, and when. */
	private static Point pressedAt;
	private static long pressedNs;

	private Screen() {
	}

	/** Lets the workbench work until something has come true. */
	static void waitUntil(String what, BooleanSupplier condition) {
		if (!comesTrue(condition, LIMIT_MS, TURN_MS)) {
			fail("waited in vain until " + what);
		}
	}

	private static boolean comesTrue(BooleanSupplier condition, long limitMs, int turnMs) {
		long end = System.nanoTime() + limitMs * 1_000_000;
		while (!condition.getAsBoolean()) {
			if (System.nanoTime() > end) {
				return false;
			}
			turn(turnMs);
		}
		return true;
	}

	/** Lets everything that is due be done and painted. */
	static void settle() {
		work();
		int quiet = 0;
		for (int i = 0; i < SETTLE_ROUNDS && quiet < QUIET_ROUNDS; i++) {
			pause(SETTLE_MS);
			quiet = work() ? 0 : quiet + 1;
		}
	}

	/** Lets the workbench work for so many milliseconds, as between the keys of a fluent hand. */
	static void rest(int milliseconds) {
		long end = System.nanoTime() + milliseconds * 1_000_000L;
		while (System.nanoTime() < end) {
			turn(TURN_MS);
		}
	}

	private static void turn(int milliseconds) {
		work();
		pause(milliseconds);
	}

	/** Does all that is due. @return whether there was anything */
	private static boolean work() {
		boolean any = false;
		while (DISPLAY.readAndDispatch()) {
			any = true;
		}
		return any;
	}

	private static void pause(int milliseconds) {
		try {
			Thread.sleep(milliseconds);
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			fail("interrupted");
		}
	}

	/** What is seen of a control. */
	static ImageData picture(Control control) {
		settle();
		Rectangle area = control instanceof Shell shell ? shell.getClientArea() : control.getBounds();
		Image image = new Image(DISPLAY, area.width, area.height);
		GC gc = new GC(control);
		gc.copyArea(image, 0, 0);
		gc.dispose();
		ImageData data = image.getImageData();
		image.dispose();
		return data;
	}

	static RGB pixel(ImageData picture, int x, int y) {
		assertTrue(x >= 0 && y >= 0 && x < picture.width && y < picture.height, "off the picture: " + x + ", " + y);
		return picture.palette.getRGB(picture.getPixel(x, y));
	}

	/** Keeps a picture for people to look at. */
	static void keep(ImageData picture, String name) throws IOException {
		Path folder = Files.createDirectories(Path.of("target", "screenshots"));
		ImageLoader loader = new ImageLoader();
		loader.data = new ImageData[] { picture };
		loader.save(folder.resolve(name + ".png").toString(), SWT.IMAGE_PNG);
	}

	/** Keeps a picture of the whole screen, menus included. */
	static void keepScreen(String name) throws IOException {
		settle();
		Rectangle area = DISPLAY.getBounds();
		Image image = new Image(DISPLAY, area.width, area.height);
		GC gc = new GC(DISPLAY);
		gc.copyArea(image, 0, 0);
		gc.dispose();
		ImageData data = image.getImageData();
		image.dispose();
		keep(data, name);
	}

	/** Presses the left button at one place of the control, moves in small steps, and lets go at another. */
	static void drag(Control control, int fromX, int fromY, int toX, int toY) {
		moveTo(control, fromX, fromY);
		pressButton();
		int steps = 6;
		for (int i = 1; i <= steps; i++) {
			point(control, fromX + (toX - fromX) * i / steps, fromY + (toY - fromY) * i / steps);
		}
		settle();
		releaseButton();
	}

	static void click(Control control, int x, int y) {
		moveTo(control, x, y);
		pressButton();
		releaseButton();
	}

	static void rightClick(Control control, int x, int y) {
		moveTo(control, x, y);
		events("click", "3");
	}

	static void doubleClick(Control control, int x, int y) {
		moveTo(control, x, y);
		beAlone();
		events("click", "--repeat", "2", "--delay", "60", "1");
		remember();
	}

	/** A press that would be taken for the second or third of a double click waits until it is not. */
	private static void beAlone() {
		Point at = DISPLAY.getCursorLocation();
		if (pressedAt != null && Math.abs(at.x - pressedAt.x) <= NEAR_PX && Math.abs(at.y - pressedAt.y) <= NEAR_PX) {
			comesTrue(() -> System.nanoTime() - pressedNs > DISPLAY.getDoubleClickTime() * 1_200_000L, LIMIT_MS, TURN_MS);
		}
	}

	private static void remember() {
		pressedAt = DISPLAY.getCursorLocation();
		pressedNs = System.nanoTime();
	}

	/** Does something while a key is held down, named as X does. */
	static void holding(String key, Runnable action) {
		events("keydown", key);
		try {
			action.run();
		} finally {
			events("keyup", key);
		}
	}

	static void moveTo(Control control, int x, int y) {
		point(control, x, y);
		settle();
	}

	/** Moves the pointer until the control, or whatever is there, has heard of it. */
	private static void point(Control control, int x, int y) {
		Point place = control.toDisplay(x, y);
		boolean moves = !DISPLAY.getCursorLocation().equals(place);
		send(moves, "mousemove", String.valueOf(place.x), String.valueOf(place.y));
	}

	static void pressButton() {
		beAlone();
		pressed = true;
		events("mousedown", "1");
		remember();
	}

	static void releaseButton() {
		if (pressed) {
			pressed = false;
			events("mouseup", "1");
		}
	}

	/** After a test that failed with the button down: the next one would begin in the middle of a drag. */
	static void letGo() {
		if (pressed) {
			events("key", "Escape");
			releaseButton();
		}
	}

	/** Turns the wheel away from the user by one notch, with Control held down. */
	static void wheelWithControl() {
		events("keydown", "ctrl", "click", "4", "keyup", "ctrl");
	}

	/** Presses and lets go a key, named as X does with its modifiers before it: {@code ctrl+shift+z}. */
	static void key(String name) {
		events("key", name);
	}

	/** Types a text into what has the focus. */
	static void type(String text) {
		// a character that no key has is given one for a moment, which whoever is typed to has to learn first
		boolean onKeys = StandardCharsets.US_ASCII.newEncoder().canEncode(text);
		send(false, "type", "--delay", onKeys ? "2" : "12", "--", text);
		settle();
	}

	/**
	 * Through the X server and not {@link Display#post}, which under GTK 3 moves the pointer without telling anybody
	 * that a button is held, and does not know every key.
	 */
	static void events(String... command) {
		send(true, command);
		settle();
	}

	/** @param awaited whether it comes to a widget what the pointer does */
	private static void send(boolean awaited, String... command) {
		if (awaited) {
			ARRIVALS.await(command);
		} else {
			ARRIVALS.awaitNothing();
		}
		Hand hand = Hand.get();
		int told = hand.begin(command);
		if (!comesTrue(() -> hand.isDone(told), LIMIT_MS, ANSWER_MS)) {
			fail("waited in vain until xdotool has done " + String.join(" ", command));
		}
		// a question of our own: what the server has sent us before is here when it is answered
		DISPLAY.getCursorLocation();
		comesTrue(ARRIVALS::areThere, ARRIVALS.limitMs(), ANSWER_MS);
	}

	/** The same while the workbench is busy with something else: it hears of all of it at once, and afterwards. */
	static void eventsWhileBusy(String... command) {
		Hand hand = Hand.get();
		int told = hand.begin(command);
		while (!hand.isDone(told)) {
			pause(ANSWER_MS);
		}
		settle();
	}
}
