package org.frisket.app.internal;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String BenchPerspective_empty;
	public static String FrisketWindowAdvisor_product;
	public static String FrisketWindowAdvisor_title;

	static {
		initializeMessages("org.frisket.app.internal.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
