package org.frisket.ui.bench.internal.snap;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String SnapHint_centre;
	public static String SnapHint_distance;
	public static String SnapHint_edge;
	public static String SnapHint_grid;
	public static String SnapHint_guide;
	public static String SnapHint_node;

	static {
		initializeMessages("org.frisket.ui.bench.internal.snap.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
