package org.frisket.print.measure;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String PrinterSheet_small;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
