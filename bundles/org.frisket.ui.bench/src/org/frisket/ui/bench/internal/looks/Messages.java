package org.frisket.ui.bench.internal.looks;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String BenchLook_before;
	public static String BenchLook_operations;
	public static String BenchLook_outline;
	public static String BenchLook_preview;
	public static String CleaningCounts_crossings;
	public static String CleaningCounts_duplicates;
	public static String CleaningCounts_gaps;
	public static String CleaningCounts_nothing;
	public static String CleaningCounts_oneCrossing;
	public static String CleaningCounts_oneDuplicate;
	public static String CleaningCounts_oneGap;
	public static String CleaningCounts_oneStretch;
	public static String CleaningCounts_stretches;
	public static String CleaningJob_failed;
	public static String CleaningJob_name;
	public static String Legend_closed;
	public static String Legend_looking;
	public static String Legend_open;
	public static String Legend_removed;
	public static String Legend_source;

	static {
		initializeMessages("org.frisket.ui.bench.internal.looks.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
