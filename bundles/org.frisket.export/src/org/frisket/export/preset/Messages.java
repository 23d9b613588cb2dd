package org.frisket.export.preset;

import org.eclipse.osgi.util.NLS;

/** What is said here, in the user's language. */
final class Messages extends NLS {

	public static String PresetText_escape;
	public static String PresetText_form;
	public static String PresetText_line;
	public static String PresetText_twice;
	public static String Preset_noFormat;
	public static String Preset_noName;
	public static String Presets_large;
	public static String Presets_notDeleted;
	public static String Presets_notSaved;
	public static String Presets_notUtf8;
	public static String Presets_twice;
	public static String Presets_unreadable;

	static {
		initializeMessages("org.frisket.export.preset.messages", Messages.class);
	}

	private Messages() {
	}
}
