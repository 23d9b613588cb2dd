package org.frisket.ui.bench.internal.handlers.shapes;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String AddMatHandler_layer;
	public static String EdgeAsOutlineHandler_noContour;
	public static String EdgeAsOutlineHandler_noPicture;
	public static String MakeOutlineHandler_noWording;
	public static String MakeOutlineHandler_notYet;
	public static String ReplacePictureHandler_one;
	public static String ReplacePictureHandler_title;
	public static String ShapeHandler_layer;
	public static String CombineHandler_tooFew;
	public static String RoundCornersHandler_none;
	public static String SplitHandler_noLine;
	public static String SplitHandler_nothing;

	static {
		initializeMessages("org.frisket.ui.bench.internal.handlers.shapes.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
