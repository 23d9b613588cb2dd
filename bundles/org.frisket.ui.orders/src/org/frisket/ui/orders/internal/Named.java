package org.frisket.ui.orders.internal;

import java.util.function.Supplier;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

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
}
