package org.frisket.ui;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String LengthText_one;
	public static String LengthText_place;
	public static String LengthText_size;
	public static String LengthUnit_inch;
	public static String LengthUnit_millimetre;

	static {
		initializeMessages("org.frisket.ui.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
