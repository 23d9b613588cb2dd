package org.frisket.ui.tests;

import java.util.stream.Collectors;

import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.PlatformUI;

/** What the line at the foot of the window says. */
final class StatusText {

	private StatusText() {
	}

	static String shown() {
		return Dialogs.all(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell())
				.filter(CLabel.class::isInstance).map(StatusText::text).collect(Collectors.joining(" | "));
	}

	private static String text(Control label) {
		return String.valueOf(((CLabel) label).getText());
	}
}
