package org.frisket.print.contour;

import org.eclipse.osgi.util.NLS;

/** What is told of contours, in the user's language. */
final class Messages extends NLS {

	public static String ContourTracer_edge;
	public static String ContourTracer_nothingLeft;
	public static String ContourTracer_onlySpecks;
	public static String ContourTracer_opaque;
	public static String ContourTracer_rough;
	public static String ContourTracer_sameColour;
	public static String ContourTracer_specks;
	public static String ContourTracer_transparent;
	public static String ContourTracer_uneven;

	static {
		initializeMessages("org.frisket.print.contour.messages", Messages.class);
	}

	private Messages() {
	}
}
