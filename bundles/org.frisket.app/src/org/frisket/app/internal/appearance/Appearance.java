package org.frisket.app.internal.appearance;

import java.util.stream.Stream;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;

/**
 * How bright the screen is. It is set before the first window is made, so that every colour that is worked out from those
 * of the system fits; another choice holds from the next start.
 */
public enum Appearance {

	SYSTEM, LIGHT, DARK;

	static final String NODE = "org.frisket.app"; //$NON-NLS-1$
	static final String KEY = "appearance"; //$NON-NLS-1$

	/** What the user has chosen. */
	public static Appearance chosen() {
		String name = InstanceScope.INSTANCE.getNode(NODE).get(KEY, SYSTEM.name());
		return Stream.of(values()).filter(value -> value.name().equals(name)).findFirst().orElse(SYSTEM);
	}

	/** Whether there is a choice on this system; elsewhere the system alone decides. */
	static boolean canBeChosen() {
		return "gtk".equals(SWT.getPlatform()); //$NON-NLS-1$
	}

	/** Has the window system use it; call it when there is a display and before there is a window. */
	public void apply() {
		if (this == SYSTEM || !canBeChosen()) {
			return;
		}
		try {
			// GTK's own setting has no way through the toolkit's API; reached by name, as it is on one system only
			Class.forName("org.eclipse.swt.internal.gtk.OS", true, SWT.class.getClassLoader()) //$NON-NLS-1$
					.getMethod("setTheme", boolean.class).invoke(null, this == DARK); //$NON-NLS-1$
		} catch (ReflectiveOperationException | LinkageError e) {
			ILog.of(Appearance.class).warn("the appearance stays as the system has it", e); //$NON-NLS-1$
		}
	}
}
