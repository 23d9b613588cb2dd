package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.Tree;

/** What assistive technology calls the controls of a window. */
final class AccessibleNames {

	private AccessibleNames() {
	}

	/** Whatever takes the focus, or shows something that is only painted, has a name. Answers how many there were. */
	static int assertAllNamed(Control in) {
		List<Control> met = Dialogs.all(in).filter(AccessibleNames::isMet).toList();
		List<String> nameless = met.stream().filter(each -> of(each).isBlank()).map(AccessibleNames::path).toList();
		assertEquals(List.of(), nameless);
		assertTrue(!met.isEmpty(), "there is nothing in " + in);
		return met.size();
	}

	private static boolean isMet(Control control) {
		boolean plain = control.getClass() == Canvas.class || control.getClass() == Composite.class;
		return control.isVisible() && !plain && !(control instanceof ToolBar)
				&& (control instanceof Text || control instanceof Combo || control instanceof Table || control instanceof Tree
						|| control instanceof Spinner || control instanceof Button || control instanceof Link
						|| control instanceof org.eclipse.swt.widgets.List || isPainted(control));
	}

	/** One of ours, and not only a frame for others. */
	private static boolean isPainted(Control control) {
		return control instanceof Canvas canvas && canvas.isListening(SWT.Paint) && canvas.getChildren().length == 0;
	}

	/** As listeners say it, else what stands on it. */
	static String of(Control control) {
		AccessibleEvent event = new AccessibleEvent(control.getAccessible());
		event.childID = ACC.CHILDID_SELF;
		listeners(control.getAccessible()).forEach(listener -> listener.getName(event));
		return event.result != null ? event.result
				: control instanceof Button || control instanceof Link || isOnlyRead(control) ? Dialogs.text(control) : "";
	}

	/** It is read out as it stands. */
	private static boolean isOnlyRead(Control control) {
		return control instanceof Text text && !text.getEditable();
	}

	/** SWT asks them for the platform only. */
	@SuppressWarnings("unchecked")
	private static List<AccessibleListener> listeners(Accessible accessible) {
		try {
			Field listeners = Accessible.class.getDeclaredField("accessibleListeners");
			listeners.setAccessible(true);
			List<AccessibleListener> all = (List<AccessibleListener>) listeners.get(accessible);
			return all == null ? List.of() : all;
		} catch (ReflectiveOperationException e) {
			throw new AssertionError(e);
		}
	}

	private static String path(Control control) {
		String own = control.getClass().getSimpleName() + (control.getToolTipText() == null ? "" : " " + control.getToolTipText());
		return control.getParent() == null ? own : path(control.getParent()) + " / " + own;
	}
}
