package org.frisket.ui.orders.internal;

import java.util.function.Supplier;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Has assistive technology call controls by what people see beside or above them. */
public final class Named {

	private Named() {
	}

	public static void as(String name, Control control) {
		as(() -> name, control);
	}

	/** @param name as it is when it is asked for */
	public static void as(Supplier<String> name, Control control) {
		control.getAccessible().addAccessibleListener(new AccessibleAdapter() {

			@Override
			public void getName(AccessibleEvent event) {
				event.result = name.get();
			}
		});
	}

	/** Each field of a form by the label that stands before it. */
	public static void byLabels(Composite form) {
		String label = ""; //$NON-NLS-1$
		for (Control child : form.getChildren()) {
			if (child instanceof Label before) {
				label = before.getText().isBlank() ? label : before.getText();
			} else if (child instanceof Text || child instanceof Combo) {
				as(label, child);
			}
		}
	}
}
