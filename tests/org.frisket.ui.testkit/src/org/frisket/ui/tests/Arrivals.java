package org.frisket.ui.tests;

import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;

/**
 * Whether what the pointer did has come to a widget. The window manager looks at each press of a button before it lets it
 * through, with all that the pointer does after it: on a busy machine that is long after the window system had it.
 */
final class Arrivals {

	/**
	 * What is done to a menu or a scroll bar comes to no widget, and what the window system drags has no release: nobody
	 * waits longer for it.
	 */
	private static final int BUTTONS_MS = 1000;
	/** The same of moves alone, which come in the next frame. */
	private static final int MOVES_MS = 50;

	private static final String PRESS = "mousedown";
	private static final String RELEASE = "mouseup";
	private static final String CLICK = "click";
	private static final String MOVE = "mousemove";
	private static final Set<String> VERBS = Set.of(PRESS, RELEASE, CLICK, MOVE, "keydown", "keyup", "key");
	private static final String LEFT = "1";
	/** All but the wheel. */
	private static final Set<String> BUTTONS = Set.of(LEFT, "2", "3");

	private int presses;
	private int releases;
	private int moves;

	Arrivals(Display display) {
		display.addFilter(SWT.MouseDown, event -> presses--);
		display.addFilter(SWT.MouseUp, event -> releases--);
		display.addFilter(SWT.MouseMove, event -> moves--);
		display.addFilter(SWT.DragDetect, event -> releases = 0);
	}

	/** From now on what xdotool does at these words is awaited, and nothing else. */
	void await(String... command) {
		presses = 0;
		releases = 0;
		moves = 0;
		String verb = "";
		int times = 1;
		for (int i = 0; i < command.length; i++) {
			String word = command[i];
			if (VERBS.contains(word)) {
				verb = word;
				times = 1;
				moves += word.equals(MOVE) ? 1 : 0;
			} else if (word.equals("--repeat")) {
				times = Integer.parseInt(command[++i]);
			} else if (word.equals("--delay")) {
				i++;
			} else if (BUTTONS.contains(word)) {
				presses += verb.equals(PRESS) || verb.equals(CLICK) ? times : 0;
				// that of another button may go to the menu that the press has opened
				releases += word.equals(LEFT) && (verb.equals(RELEASE) || verb.equals(CLICK)) ? times : 0;
			}
		}
	}

	/** Nothing is awaited, as nothing comes. */
	void awaitNothing() {
		await();
	}

	boolean areThere() {
		return presses <= 0 && releases <= 0 && moves <= 0;
	}

	int limitMs() {
		return presses > 0 || releases > 0 ? BUTTONS_MS : MOVES_MS;
	}
}
