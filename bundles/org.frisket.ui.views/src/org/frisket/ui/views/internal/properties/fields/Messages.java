package org.frisket.ui.views.internal.properties.fields;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String AngleField_form;
	public static String AngleField_text;
	public static String AngleField_unit;
	public static String Field_several;
	public static String Heading_fold;
	public static String Heading_unfold;
	public static String LengthField_divisor;
	public static String LengthField_form;
	public static String LengthField_text;
	public static String LengthField_tooLarge;
	public static String LengthField_tooSmall;
	public static String LengthField_unit;
	public static String NumberField_form;
	public static String NumberField_range;
	public static String NumberField_whole;

	static {
		initializeMessages("org.frisket.ui.views.internal.properties.fields.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
