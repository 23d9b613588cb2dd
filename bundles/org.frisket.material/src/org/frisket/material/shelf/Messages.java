package org.frisket.material.shelf;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String PackStudy_sheets;
	public static String PackStudy_says;
	public static String StockDraft_caliper;

	static {
		NLS.initializeMessages("org.frisket.material.shelf.messages", Messages.class);
	}

	private Messages() {
	}
}
