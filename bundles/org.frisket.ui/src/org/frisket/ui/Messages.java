package org.frisket.ui;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String LengthText_one;
	public static String LengthText_place;
	public static String LengthText_size;
	public static String LengthUnit_inch;
	public static String LengthUnit_millimetre;
	public static String OperationName_crease;
	public static String OperationName_cut;
	public static String OperationName_draw;
	public static String OperationName_kissCut;
	public static String OperationName_perforate;
	public static String OperationName_print;

	static {
		initializeMessages("org.frisket.ui.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
