package org.frisket.ui.bench.internal.preferences;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String BenchPreferencePage_autosave;
	public static String BenchPreferencePage_inches;
	public static String BenchPreferencePage_language;
	public static String BenchPreferencePage_millimetres;
	public static String BenchPreferencePage_unit;
	public static String SurfacePreferencePage_boxTouches;
	public static String SurfacePreferencePage_grid;
	public static String SurfacePreferencePage_guides;
	public static String SurfacePreferencePage_lockGuides;
	public static String SurfacePreferencePage_rulers;
	public static String SurfacePreferencePage_snap;
	public static String SurfacePreferencePage_snapCentres;
	public static String SurfacePreferencePage_snapEdges;
	public static String SurfacePreferencePage_snapGrid;
	public static String SurfacePreferencePage_snapGuides;
	public static String SurfacePreferencePage_snapNodes;
	public static String SurfacePreferencePage_stepInches;
	public static String SurfacePreferencePage_stepMillimetres;
	public static String SurfacePreferencePage_stepWrong;
	public static String StudioPreferencePage_folder;
	public static String StudioPreferencePage_note;
	public static String NewJobPage_colour;
	public static String NewJobPage_description;
	public static String NewJobPage_name;

	static {
		initializeMessages("org.frisket.ui.bench.internal.preferences.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
