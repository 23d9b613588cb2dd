package org.frisket.ui.bench.internal.handlers;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String AddMatHandler_layer;
	public static String EdgeAsOutlineHandler_noContour;
	public static String EdgeAsOutlineHandler_noPicture;
	public static String MakeOutlineHandler_noWording;
	public static String MakeOutlineHandler_notYet;
	public static String CureHandler_byHand;
	public static String CureHandler_none;
	public static String CureHandler_soon;
	public static String ImportHandler_artFiles;
	public static String ImportHandler_title;
	public static String OpenJobHandler_allFiles;
	public static String OpenJobHandler_jobFiles;
	public static String OpenJobHandler_title;
	public static String RedoHandler_named;
	public static String RedoHandler_nothing;
	public static String RepeatForLinesHandler_notYet;
	public static String RepeatForLinesHandler_oneWording;
	public static String ReplacePictureHandler_one;
	public static String ReplacePictureHandler_title;
	public static String ShapeHandler_layer;
	public static String SightHandler_showAll;
	public static String SightHandler_unlockAll;
	public static String CombineHandler_tooFew;
	public static String RoundCornersHandler_none;
	public static String SplitHandler_noLine;
	public static String SplitHandler_nothing;
	public static String UndoHandler_named;
	public static String UndoHandler_nothing;
	public static String ZoomToHandler_cancel;
	public static String ZoomToHandler_percent;
	public static String ZoomToHandler_show;
	public static String ZoomToHandler_title;
	public static String ZoomToHandler_wrong;

	static {
		initializeMessages("org.frisket.ui.bench.internal.handlers.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
