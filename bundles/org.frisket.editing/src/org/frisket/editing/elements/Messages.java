package org.frisket.editing.elements;

import org.eclipse.osgi.util.NLS;

/** The names of edits in the user's language. */
final class Messages extends NLS {

	public static String AddElement_name;
	public static String ChangeOperation_add;
	public static String ChangeOperation_dash;
	public static String ChangeOperation_gap;
	public static String ChangeOperation_kind;
	public static String ChangeOperation_order;
	public static String ChangeOperation_passes;
	public static String ChangeOperation_remove;
	public static String ChangeOperation_tool;
	public static String DeleteElements_name;
	public static String DuplicateElements_name;
	public static String GroupElements_name;
	public static String ImportArt_name;
	public static String PasteElements_name;
	public static String RenameElements_name;
	public static String RenameGroup_name;
	public static String ReorderElements_backward;
	public static String ReorderElements_bottom;
	public static String ReorderElements_forward;
	public static String ReorderElements_front;
	public static String SetElements_hide;
	public static String SetElements_lock;
	public static String SetElements_show;
	public static String SetElements_unlock;
	public static String UngroupElements_name;

	static {
		initializeMessages("org.frisket.editing.elements.messages", Messages.class);
	}

	private Messages() {
	}
}
