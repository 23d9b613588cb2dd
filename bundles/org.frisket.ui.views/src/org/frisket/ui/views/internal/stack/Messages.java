package org.frisket.ui.views.internal.stack;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String StackAccess_findings;
	public static String StackAccess_grouped;
	public static String StackAccess_listed;
	public static String StackActions_copy;
	public static String StackActions_elements;
	public static String StackActions_layer;
	public static String StackActions_stock;
	public static String StackCanvas_hidden;
	public static String StackCanvas_hide;
	public static String StackCanvas_lock;
	public static String StackCanvas_locked;
	public static String StackCanvas_name;
	public static String StackCanvas_show;
	public static String StackCanvas_unlock;
	public static String StackMenu_add;
	public static String StackMenu_colour;
	public static String StackMenu_duplicate;
	public static String StackMenu_group;
	public static String StackMenu_hide;
	public static String StackMenu_lower;
	public static String StackMenu_pin;
	public static String StackMenu_raise;
	public static String StackMenu_remove;
	public static String StackMenu_rename;
	public static String StackMenu_repair;
	public static String StackMenu_selectGroup;
	public static String StackMenu_show;
	public static String StackMenu_stock;
	public static String StackMenu_ungroup;
	public static String StackMenu_unpin;
	public static String StackMouse_hide;
	public static String StackMouse_lock;
	public static String StackMouse_pull;
	public static String StackMouse_show;
	public static String StackMouse_unlock;
	public static String StackPainter_onePiece;
	public static String StackPainter_parted;
	public static String StackPainter_pieces;
	public static String StackPainter_uncounted;
	public static String StackView_empty;
	public static String StackView_noBench;
	public static String StockColours_none;
	public static String StockColours_other;
	public static String StockColours_title;
	public static String ThreadPull_step;

	static {
		initializeMessages("org.frisket.ui.views.internal.stack.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
