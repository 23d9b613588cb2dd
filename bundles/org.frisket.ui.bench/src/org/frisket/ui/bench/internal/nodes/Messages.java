package org.frisket.ui.bench.internal.nodes;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String NodeMenu_add;
	public static String NodeMenu_break;
	public static String NodeMenu_chord;
	public static String NodeMenu_close;
	public static String NodeMenu_corner;
	public static String NodeMenu_curve;
	public static String NodeMenu_delete;
	public static String NodeMenu_join;
	public static String NodeMenu_line;
	public static String NodeMenu_reverse;
	public static String NodeMenu_smooth;
	public static String NodeMenu_symmetric;
	public static String NodeMode_noNodes;
	public static String NodeMode_unreadable;
	public static String PenTool_close;
	public static String PenTool_layer;

	static {
		initializeMessages("org.frisket.ui.bench.internal.nodes.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
