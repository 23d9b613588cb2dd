package org.frisket.ui.bench.internal.rulers;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Guides_add;
	public static String Guides_move;
	public static String Guides_placeAcross;
	public static String Guides_placeDown;
	public static String PlaceText_wrong;

	static {
		initializeMessages("org.frisket.ui.bench.internal.rulers.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
