package org.frisket.ui.bench.internal.editor;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String BenchEditor_changedOutside;
	public static String BenchEditor_changedOutsideTitle;
	public static String BenchEditor_couldNotOpen;
	public static String BenchEditor_couldNotOpenAdvice;
	public static String BenchEditor_couldNotSaveTitle;
	public static String BenchEditor_jobFiles;
	public static String BenchEditor_overwrite;
	public static String BenchEditor_saveAs;
	public static String BenchEditor_wrongInput;
	public static String BenchStatus_cautions;
	public static String BenchStatus_checking;
	public static String BenchStatus_findingsBlocking;
	public static String BenchStatus_noFindings;
	public static String BenchStatus_notes;
	public static String BenchStatus_oneCaution;
	public static String BenchStatus_oneNote;
	public static String BenchStatus_onePiece;
	public static String BenchStatus_pieces;
	public static String BenchStatus_selection;
	public static String BenchStatus_zoom;
	public static String PictureJob_failed;
	public static String PictureJob_name;

	static {
		initializeMessages("org.frisket.ui.bench.internal.editor.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
