package org.frisket.ui.bench.internal.export;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String ExportDialog_blocking;
	public static String ExportDialog_browse;
	public static String ExportDialog_cancel;
	public static String ExportDialog_export;
	public static String ExportDialog_exportAnyway;
	public static String ExportDialog_format;
	public static String ExportDialog_heading;
	public static String ExportDialog_isFolder;
	public static String ExportDialog_message;
	public static String ExportDialog_more;
	public static String ExportDialog_noFolder;
	public static String ExportDialog_noFormat;
	public static String ExportDialog_noFormats;
	public static String ExportDialog_noPlace;
	public static String ExportDialog_oneBlocking;
	public static String ExportDialog_replace;
	public static String ExportDialog_title;
	public static String ExportDialog_willReplace;
	public static String ExportDialog_willReplaceAll;
	public static String ExportJob_failed;
	public static String ExportJob_name;
	public static String ExportRun_blocked;
	public static String ExportRun_blockedTitle;
	public static String ExportRun_cancelled;
	public static String ExportRun_cancelledAfter;
	public static String ExportRun_deaf;
	public static String ExportRun_exported;
	public static String ExportRun_exportedAll;
	public static String ExportRun_failed;
	public static String ExportRun_failedTitle;
	public static String ExportRun_pull;
	public static String ExportRun_someFailed;
	public static String MachinePart_machine;
	public static String MachinePart_option;
	public static String MachinePart_plain;
	public static String MachinePart_run;
	public static String PlacePart_drive;
	public static String PlacePart_file;
	public static String PlacePart_folder;
	public static String PlacePart_names;
	public static String PlacePart_noFolder;
	public static String PresetPart_delete;
	public static String PresetPart_none;
	public static String PresetPart_preset;
	public static String PresetPart_save;
	public static String PresetPart_saveMessage;
	public static String PresetPart_saveTitle;
	public static String WhatPart_all;
	public static String WhatPart_bench;
	public static String WhatPart_chosen;
	public static String WhatPart_numbers;
	public static String WhatPart_theSheet;
	public static String WhatPart_what;

	static {
		initializeMessages("org.frisket.ui.bench.internal.export.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
