package org.frisket.ui.bench.internal.editor;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String JobSaver_copyTitle;
	public static String JobSaver_copied;
	public static String JobArrival_advice;
	public static String JobArrival_waiting;
	public static String EditorFile_recoveredAtPlace;
	public static String AutosaveStatus_saved;
	public static String AutosaveStatus_trouble;
	public static String BenchDocument_firstLayer;
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
	public static String EditorFile_discardRecovered;
	public static String EditorFile_keepRecovered;
	public static String EditorFile_notReloaded;
	public static String EditorFile_recovered;
	public static String EditorFile_reloading;
	public static String EditorJob_cure;
	public static String FerryBanner_narrowMat;
	public static String FerryBanner_title;
	public static String FerryBanner_wideMat;
	public static String FerryBanner_wording;
	public static String JobSaver_again;
	public static String JobSaver_cancel;
	public static String JobSaver_changedOutside;
	public static String JobSaver_changedOutsideTitle;
	public static String JobSaver_couldNotSave;
	public static String JobSaver_couldNotSaveTitle;
	public static String JobSaver_dialogTitle;
	public static String JobSaver_exists;
	public static String JobSaver_existsTitle;
	public static String JobSaver_jobFiles;
	public static String JobSaver_replace;
	public static String JobSaver_saveAs;
	public static String OutsideWatch_changed;
	public static String OutsideWatch_changedBoth;
	public static String OutsideWatch_job;
	public static String OutsideWatch_keep;
	public static String OutsideWatch_reload;
	public static String OutsideWatch_removed;
	public static String OutsideWatch_saveAgain;
	public static String PictureJob_failed;
	public static String PictureJob_name;
	public static String TriedJob_name;

	static {
		initializeMessages("org.frisket.ui.bench.internal.editor.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
