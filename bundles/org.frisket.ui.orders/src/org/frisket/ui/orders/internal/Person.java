package org.frisket.ui.orders.internal;

import org.eclipse.core.runtime.preferences.InstanceScope;

/**
 * Whoever sits at this desk. The name is kept with the desk and not with the studio: at each desk sits somebody else.
 */
public final class Person {

	/** The preferences of this desk in which it is kept. */
	public static final String NODE = "org.frisket.ui.orders"; //$NON-NLS-1$

	/** Under which it is kept; empty for what the computer calls its user. */
	public static final String KEY = "person"; //$NON-NLS-1$

	private Person() {
	}

	/** As histories say it. */
	public static String name() {
		String chosen = InstanceScope.INSTANCE.getNode(NODE).get(KEY, "").strip(); //$NON-NLS-1$
		return chosen.isEmpty() ? ofComputer() : chosen;
	}

	/** What the computer calls its user. */
	public static String ofComputer() {
		return System.getProperty("user.name", ""); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
