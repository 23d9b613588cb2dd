package org.frisket.ui.orders.internal.rules;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String StageRulesPage_description;

	static {
		initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
