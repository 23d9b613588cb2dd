package org.frisket.app.internal;

import java.io.IOException;
import java.net.URL;
import java.nio.file.Path;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.osgi.service.datalocation.Location;

/**
 * Where the workbench remembers its windows: one fixed place in the user's home, that nobody is asked about. A second
 * workbench that runs at the same time remembers beside it.
 */
final class WindowMemory {

	private static final int MOST = 16;
	private static final Path HOME = Path.of(System.getProperty("user.home")); //$NON-NLS-1$
	private static final String FOLDER = ".frisket/workspace"; //$NON-NLS-1$

	private WindowMemory() {
	}

	/** Claims a place unless one was given on the command line. Runs before anything asks for it. */
	static void claim() {
		Location location = Platform.getInstanceLocation();
		if (location == null || location.isSet()) {
			return;
		}
		String first = first(location);
		for (int i = 1; i <= MOST; i++) {
			if (claimed(location, i == 1 ? first : first + "-" + i)) { //$NON-NLS-1$
				return;
			}
		}
	}

	/** What the product is set up for, or else a folder beside the studio's. */
	private static String first(Location location) {
		URL fallback = location.getDefault();
		String url = fallback != null ? fallback.toString() : HOME.resolve(FOLDER).toUri().toString();
		return url.endsWith("/") ? url.substring(0, url.length() - 1) : url; //$NON-NLS-1$
	}

	private static boolean claimed(Location location, String url) {
		try {
			return location.set(new URL(url + "/"), true); //$NON-NLS-1$
		} catch (IOException e) {
			ILog.of(WindowMemory.class).warn("cannot remember windows in " + url, e); //$NON-NLS-1$
			return false;
		}
	}
}
