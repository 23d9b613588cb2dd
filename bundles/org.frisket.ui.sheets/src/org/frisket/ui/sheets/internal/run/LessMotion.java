package org.frisket.ui.sheets.internal.run;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Properties;
import java.util.Set;

/**
 * Whether the platform asks for less motion. SWT cannot be asked; what GTK reads at its start can: the settings file of its
 * documentation (GtkSettings), with the key {@code gtk-enable-animations}. Elsewhere nothing is asked for.
 */
final class LessMotion {

	private static final String KEY = "gtk-enable-animations"; //$NON-NLS-1$
	private static final Set<String> NO = Set.of("0", "false", "no"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$

	private LessMotion() {
	}

	static boolean isAsked() {
		try {
			String config = System.getenv("XDG_CONFIG_HOME"); //$NON-NLS-1$
			Path folder = config == null || config.isBlank() ? Path.of(System.getProperty("user.home"), ".config") //$NON-NLS-1$ //$NON-NLS-2$
					: Path.of(config);
			return isAskedIn(folder.resolve("gtk-3.0").resolve("settings.ini")); //$NON-NLS-1$ //$NON-NLS-2$
		} catch (InvalidPathException e) {
			return false;
		}
	}

	static boolean isAskedIn(Path file) {
		if (!Files.isReadable(file)) {
			return false;
		}
		Properties settings = new Properties();
		try (Reader in = Files.newBufferedReader(file)) {
			settings.load(in);
		} catch (IOException | IllegalArgumentException e) {
			return false;
		}
		return NO.contains(settings.getProperty(KEY, "").strip().toLowerCase(java.util.Locale.ROOT)); //$NON-NLS-1$
	}
}
