package org.frisket.ui.views;

/** Ids of the views, for perspectives and for whoever opens one. */
public final class Views {

	/** What makeready found, one finding a line. */
	public static final String MAKEREADY_ID = "org.frisket.ui.views.makeready"; //$NON-NLS-1$

	/** What steps of repair would put right in outlines, one repair a line. */
	public static final String REPAIRS_ID = "org.frisket.ui.views.repairs"; //$NON-NLS-1$

	/** The layers, drawn edge-on. */
	public static final String STACK_ID = "org.frisket.ui.views.stack"; //$NON-NLS-1$

	/** Place, size, wording, mats and operations of the selection. */
	public static final String PROPERTIES_ID = "org.frisket.ui.views.properties"; //$NON-NLS-1$

	/** Fonts and a picture of every glyph. */
	public static final String TYPE_CASE_ID = "org.frisket.ui.views.typeCase"; //$NON-NLS-1$

	/** The sheets with the parts on them; another bundle brings it. */
	public static final String SHEETS_ID = "org.frisket.ui.sheets.sheets"; //$NON-NLS-1$

	/** The order in which a machine works a sheet; another bundle brings it. */
	public static final String RUN_ID = "org.frisket.ui.sheets.run"; //$NON-NLS-1$

	private Views() {
	}
}
