package org.frisket.ui.orders.internal.backup;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String BackupRun_files;
	public static String BackupRun_refused;
	public static String BackupRun_title;
	public static String BackupRun_writing;
	public static String BackupRun_written;
	public static String RestoreRun_cancel;
	public static String RestoreRun_done;
	public static String RestoreRun_doneKept;
	public static String RestoreRun_reading;
	public static String RestoreRun_refused;
	public static String RestoreRun_restore;
	public static String RestoreRun_restoring;
	public static String RestoreRun_title;
	public static String RestoreWords_dirty;
	public static String RestoreWords_fresh;
	public static String RestoreWords_kept;
	public static String RestoreWords_more;
	public static String RestoreWords_now;
	public static String RestoreWords_nowWhen;
	public static String RestoreWords_open;
	public static String RestoreWords_shared;
	public static String RestoreWords_then;
	public static String RestoreWords_thenWhen;

	static {
		initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
