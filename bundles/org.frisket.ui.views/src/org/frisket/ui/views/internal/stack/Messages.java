package org.frisket.ui.views.internal.stack;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String StackCanvas_hidden;
	public static String StackCanvas_hide;
	public static String StackCanvas_lock;
	public static String StackCanvas_locked;
	public static String StackCanvas_name;
	public static String StackCanvas_show;
	public static String StackCanvas_unlock;
	public static String StackPainter_onePiece;
	public static String StackPainter_parted;
	public static String StackPainter_pieces;
	public static String StackPainter_uncounted;
	public static String StackView_empty;
	public static String StackView_noBench;

	static {
		initializeMessages("org.frisket.ui.views.internal.stack.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
