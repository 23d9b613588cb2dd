package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Windows that stand before the workbench's, met while whoever opened them still waits. */
final class Dialogs {

	private static final int LOOK_AGAIN_MS = 50;
	private static final int AGAIN_MS = 5000;
	private static final Display DISPLAY = Display.getCurrent();

	private Dialogs() {
	}

	/** Does something that asks, and answers with the button of this label. What was read before it was pressed. */
	static List<String> answer(String button, Runnable asking) {
		return answer(button, asking, () -> {
			// nothing has to happen before
		});
	}

	/** The same, with something that happens while the question stands. */
	static List<String> answer(String button, Runnable asking, Runnable meanwhile) {
		Answer answer = new Answer(button, meanwhile);
		DISPLAY.timerExec(LOOK_AGAIN_MS, answer);
		asking.run();
		answer.returned = true;
		Screen.waitUntil("someone asks something that “" + button + "” answers", () -> answer.read != null);
		Screen.settle();
		return answer.read;
	}

	private static final class Answer implements Runnable {

		private final String label;
		private final Runnable meanwhile;
		private List<String> read;
		private boolean returned;

		Answer(String label, Runnable meanwhile) {
			this.label = label;
			this.meanwhile = meanwhile;
		}

		@Override
		public void run() {
			Optional<Button> button = Optional.empty();
			try {
				button = shells().flatMap(Dialogs::all).filter(Button.class::isInstance).map(Button.class::cast)
						.filter(each -> plain(each.getText()).equals(label) && each.isEnabled()).findFirst();
			} catch (SWTException goneMeanwhile) {
				// whoever asks would wait for ever
			}
			if (button.isEmpty()) {
				if (read == null || !returned) {
					DISPLAY.timerExec(read == null ? LOOK_AGAIN_MS : AGAIN_MS, this);
				}
				return;
			}
			if (read == null) {
				read = all(button.get().getShell()).map(Dialogs::text).toList();
				meanwhile.run();
			}
			// a key that repeated itself on a busy machine asks once more, and whoever asks would wait for ever
			DISPLAY.timerExec(AGAIN_MS, () -> {
				if (!returned) {
					run();
				}
			});
			press(button.get());
		}
	}

	/** The window with this title that is open now. */
	static Shell shell(String title) {
		return shells().filter(each -> each.getText().equals(title)).findFirst()
				.orElseThrow(() -> new AssertionError("no window “" + title + "” among "
						+ shells().map(Shell::getText).toList()));
	}

	static boolean isOpen(String title) {
		return shells().anyMatch(each -> each.getText().equals(title));
	}

	private static Stream<Shell> shells() {
		return Arrays.stream(DISPLAY.getShells()).filter(Shell::isVisible);
	}

	/** The button of this label in a part of a window. */
	static Button button(Control in, String label) {
		return all(in).filter(Button.class::isInstance).map(Button.class::cast)
				.filter(each -> plain(each.getText()).equals(label)).findFirst()
				.orElseThrow(() -> new AssertionError("no button “" + label + "”"));
	}

	static void press(Button button) {
		assertTrue(button.isEnabled(), button.getText());
		button.notifyListeners(SWT.Selection, new Event());
	}

	/** All that can be seen in a part of a window, itself too. */
	static Stream<Control> all(Control control) {
		if (!control.isVisible()) {
			return Stream.empty();
		}
		return control instanceof Composite composite
				? Stream.concat(Stream.of(control), Stream.of(composite.getChildren()).flatMap(Dialogs::all))
				: Stream.of(control);
	}

	/** What is written on a control; empty if nothing. */
	static String text(Control control) {
		if (control instanceof Label label) {
			return label.getText();
		}
		if (control instanceof Text text) {
			return text.getText();
		}
		return control instanceof Button button ? plain(button.getText()) : "";
	}

	private static String plain(String label) {
		return label.replace("&", "");
	}

	/** Types into the window system's own dialog of this title when it comes, which no widget of ours stands for. */
	static void typeIntoNext(String title, String text) {
		try {
			new ProcessBuilder("sh", "-c", """
					id=$(xdotool search --sync --onlyvisible --name "^$0$" | head -1)
					xdotool windowactivate --sync "$id"
					xdotool key ctrl+a type --delay 5 "$1"
					xdotool key Return
					""", title, text).inheritIO().start();
		} catch (IOException e) {
			throw new UncheckedIOException("the user interface tests need xdotool", e);
		}
	}
}
