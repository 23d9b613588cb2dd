package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

	private static boolean pressed;

	/** Long enough for the slowest machine; a test that waits for it has failed already. */
	private static final long LIMIT_MS = 60_000;
	private static final int SETTLE_ROUNDS = 12;
	private static final Display DISPLAY = Display.getCurrent();

	private Screen() {
	}

	/** Lets the workbench work until something has come true. */
	static void waitUntil(String what, BooleanSupplier condition) {
		long end = System.currentTimeMillis() + LIMIT_MS;
		while (!condition.getAsBoolean()) {
			if (System.currentTimeMillis() > end) {
				fail("waited in vain until " + what);
			}
			turn();
		}
	}

	/** Lets everything that is due be done and painted. */
	static void settle() {
		for (int i = 0; i < SETTLE_ROUNDS; i++) {
			turn();
		}
	}

	/** Lets the workbench work for so many milliseconds, as between the keys of a fluent hand. */
	static void rest(int milliseconds) {
		long end = System.nanoTime() + milliseconds * 1_000_000L;
		while (System.nanoTime() < end) {
			turn();
		}
	}

	private static void turn() {
		while (DISPLAY.readAndDispatch()) {
			// until nothing is left
		}
		try {
			Thread.sleep(5);
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
			moveTo(control, fromX + (toX - fromX) * i / steps, fromY + (toY - fromY) * i / steps);
		}
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
		events("click", "--repeat", "2", "--delay", "60", "1");
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
		Point place = control.toDisplay(x, y);
		events("mousemove", String.valueOf(place.x), String.valueOf(place.y));
	}

	static void pressButton() {
		pressed = true;
		events("mousedown", "1");
	}

	static void releaseButton() {
		pressed = false;
		events("mouseup", "1");
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
		events("type", "--", text);
	}

	/**
	 * Through the X server and not {@link Display#post}, which under GTK 3 moves the pointer without telling anybody
	 * that a button is held, and does not know every key.
	 */
	static void events(String... command) {
		Process process = start(command);
		waitUntil("xdotool has done " + String.join(" ", command), () -> !process.isAlive());
		assertEquals(0, process.exitValue(), String.join(" ", command));
		settle();
	}

	/** The same while the workbench is busy with something else: it hears of all of it at once, and afterwards. */
	static void eventsWhileBusy(String... command) {
		try {
			assertEquals(0, start(command).waitFor(), String.join(" ", command));
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			fail("interrupted");
		}
		settle();
	}

	private static Process start(String... command) {
		List<String> line = new ArrayList<>(List.of("xdotool"));
		line.addAll(List.of(command));
		if (!command[0].equals("type")) {
			// a question to the server: it is answered after all that was sent before, however busy the machine is;
			// it asks the root window, as any other may close by what was sent
			line.add("get_num_desktops");
		}
		try {
			return new ProcessBuilder(line).redirectOutput(Redirect.DISCARD).redirectError(Redirect.INHERIT).start();
		} catch (IOException e) {
			throw new UncheckedIOException("the user interface tests need xdotool", e);
		}
	}
}
