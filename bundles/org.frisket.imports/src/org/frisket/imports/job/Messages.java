package org.frisket.imports.job;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {

	public static String ArtRules_areas;
	public static String ArtRules_lines;
	public static String ArtRules_pictures;
	public static String ArtRules_repair;
	public static String ArtTaker_flatPicture;

	static {
		initializeMessages("org.frisket.imports.job.messages", Messages.class);
	}

	private Messages() {
	}
}
