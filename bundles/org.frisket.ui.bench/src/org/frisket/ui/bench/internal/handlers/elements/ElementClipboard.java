package org.frisket.ui.bench.internal.handlers.elements;

import org.eclipse.swt.SWTError;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Display;

/** The system's clipboard, on which elements lie as the text of a job file. */
final class ElementClipboard {

	private ElementClipboard() {
	}

	/** The text on the clipboard; null if there is none. */
	static String text() {
		Clipboard clipboard = new Clipboard(Display.getCurrent());
		try {
			return (String) clipboard.getContents(TextTransfer.getInstance());
		} finally {
			clipboard.dispose();
		}
	}

	/** @return whether the system took it, which it does not while another program holds the clipboard */
	static boolean put(String text) {
		Clipboard clipboard = new Clipboard(Display.getCurrent());
		try {
			clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
			return true;
		} catch (SWTError e) {
			return false;
		} finally {
			clipboard.dispose();
		}
	}
}
