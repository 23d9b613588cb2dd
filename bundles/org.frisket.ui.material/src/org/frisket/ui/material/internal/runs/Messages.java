package org.frisket.ui.material.internal.runs;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String LineCount_name;
	public static String RunDialog_how;
	public static String RunDialog_in;
	public static String RunDialog_keep;
	public static String RunDialog_keeping;
	public static String RunDialog_measuring;
	public static String RunDialog_nothing;
	public static String RunDialog_offShelf;
	public static String RunDialog_plainMachine;
	public static String RunDialog_title;
	public static String RunDialog_usualTool;
	public static String RunDialog_work;
	public static String RunFields_exposure;
	public static String RunFields_machine;
	public static String RunFields_metres;
	public static String RunFields_passes;
	public static String RunFields_pressure;
	public static String RunFields_remark;
	public static String RunFields_speed;
	public static String RunFields_stock;
	public static String RunFields_tool;
	public static String RunFields_verdict;
	public static String RunFields_work;

	static {
		NLS.initializeMessages("org.frisket.ui.material.internal.runs.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
