package org.frisket.export.hpgl;

import org.eclipse.osgi.util.NLS;

/** What the exporter says, in the user's language. */
final class Messages extends NLS {

	public static String HpglExporter_arcs;
	public static String HpglExporter_change;
	public static String HpglExporter_comments;
	public static String HpglExporter_coordinates;
	public static String HpglExporter_force;
	public static String HpglExporter_line;
	public static String HpglExporter_pen;
	public static String HpglExporter_pens;
	public static String HpglExporter_speed;
	public static String Plot_noSuchPen;
	public static String Plot_tooFar;

	static {
		initializeMessages("org.frisket.export.hpgl.messages", Messages.class);
	}

	private Messages() {
	}
}
