package org.frisket.orders.desk;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String DueDay_none;
	public static String SampleStudio_alphabet;
	public static String SampleStudio_anniversary;
	public static String SampleStudio_boxes;
	public static String SampleStudio_crane;
	public static String SampleStudio_labels;
	public static String SampleStudio_lanterns;
	public static String SampleStudio_menu;
	public static String SampleStudio_name;
	public static String SampleStudio_note;
	public static String SampleStudio_place;
	public static String SampleStudio_remark;
	public static String SampleStudio_stencil;
	public static String SampleStudio_tags;
	public static String SampleStudio_timetable;
	public static String SavedFilters_noName;
	public static String SavedFilters_tooLong;

	static {
		initializeMessages("org.frisket.orders.desk.messages", Messages.class);
	}

	private Messages() {
	}
}
