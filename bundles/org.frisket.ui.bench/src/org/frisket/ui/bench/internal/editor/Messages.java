package org.frisket.ui.bench.internal.editor;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String AutosaveStatus_saved;
	public static String AutosaveStatus_trouble;
	public static String BenchEditor_couldNotOpen;
	public static String BenchEditor_couldNotOpenAdvice;
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
	public static String EditorJob_cure;
	public static String EditorPlace_discardRecovered;
	public static String EditorPlace_keep;
	public static String EditorPlace_keepRecovered;
	public static String EditorPlace_notReloaded;
	public static String EditorPlace_recovered;
	public static String EditorPlace_reload;
	public static String EditorPlace_reloading;
	public static String JobArrival_advice;
	public static String JobArrival_waiting;
	public static String PictureJob_failed;
	public static String PictureJob_name;
	public static String SavePlace_again;
	public static String SavePlace_cancel;
	public static String SavePlace_copied;
	public static String SavePlace_copyTitle;
	public static String SavePlace_couldNotSave;
	public static String SavePlace_couldNotSaveTitle;
	public static String SavePlace_dialogTitle;
	public static String SavePlace_exists;
	public static String SavePlace_existsTitle;
	public static String SavePlace_jobFiles;
	public static String SavePlace_replace;
	public static String SavePlace_saveAs;
	public static String TriedJob_name;

	static {
		initializeMessages("org.frisket.ui.bench.internal.editor.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
