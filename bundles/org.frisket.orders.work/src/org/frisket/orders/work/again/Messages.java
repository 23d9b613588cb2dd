package org.frisket.orders.work.again;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Copy_alone;
	public static String Copy_copies;
	public static String Copy_guests;
	public static String Copy_guestsCure;
	public static String Copy_layCure;
	public static String Copy_leftovers;
	public static String Copy_leftoversCure;
	public static String Copy_picture;
	public static String Copy_pictureCure;
	public static String Copy_pictureMissing;
	public static String Copy_pictureWas;
	public static String Copy_ranWell;
	public static String Copy_ranWellCure;
	public static String Copy_settings;
	public static String Copy_sheets;
	public static String Copy_usedUp;
	public static String CustomerNotes_agreement;
	public static String CustomerNotes_agreementCure;
	public static String CustomerNotes_customer;
	public static String CustomerNotes_erasedCure;
	public static String CustomerNotes_known;
	public static String CustomerNotes_nameCure;
	public static String FontNotes_content;
	public static String FontNotes_damaged;
	public static String FontNotes_damagedCure;
	public static String FontNotes_font;
	public static String FontNotes_gone;
	public static String FontNotes_goneCure;
	public static String FontNotes_keptUsed;
	public static String FontNotes_otherCure;
	public static String Note_cure;
	public static String Note_was;
	public static String Note_wasIs;
	public static String Operation_crease;
	public static String Operation_cut;
	public static String Operation_draw;
	public static String Operation_kissCut;
	public static String Operation_perforate;
	public static String Operation_print;
	public static String StudioNotes_caliper;
	public static String StudioNotes_colourCure;
	public static String StudioNotes_depthCure;
	public static String StudioNotes_gone;
	public static String StudioNotes_grammage;
	public static String StudioNotes_known;
	public static String StudioNotes_machine;
	public static String StudioNotes_machineCure;
	public static String StudioNotes_nothing;
	public static String StudioNotes_of;
	public static String StudioNotes_priceCure;
	public static String StudioNotes_stock;
	public static String StudioNotes_stockCure;
	public static String StudioNotes_tool;
	public static String StudioNotes_toolCure;
	public static String StudioNotes_truthCure;
	public static String Wish_quantity;

	static {
		initializeMessages("org.frisket.orders.work.again.messages", Messages.class);
	}

	private Messages() {
	}
}
