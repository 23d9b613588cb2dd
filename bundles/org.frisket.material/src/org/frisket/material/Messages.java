package org.frisket.material;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Price_amount;
	public static String Price_currency;
	public static String StockBuilder_noCurrency;
	public static String StockBuilder_noGrade;
	public static String StockBuilder_noPounds;
	public static String StockField_constant;
	public static String StockField_number;
	public static String StockRules_beyond;
	public static String StockRules_bulk;
	public static String StockRules_control;
	public static String StockRules_decimals;
	public static String StockRules_id;
	public static String StockRules_long;
	public static String StockRules_missing;
	public static String StockRules_mixed;
	public static String StockRules_negative;
	public static String StockRules_noMeasure;
	public static String StockRules_notAbove0;
	public static String StockRules_perhaps;
	public static String StockShelf_changed;
	public static String StockShelf_gone;
	public static String StockShelf_idTaken;
	public static String StockShelf_nameTaken;
	public static String field_abrasion;
	public static String field_basisWeight;
	public static String field_caliper;
	public static String field_caliperSource;
	public static String field_colour;
	public static String field_currency;
	public static String field_description;
	public static String field_family;
	public static String field_finish;
	public static String field_grade;
	public static String field_grain;
	public static String field_grammage;
	public static String field_id;
	public static String field_lowWater;
	public static String field_name;
	public static String field_notes;
	public static String field_onHand;
	public static String field_price;
	public static String field_sizes;

	static {
		initializeMessages("org.frisket.material.messages", Messages.class);
	}

	private Messages() {
	}
}
