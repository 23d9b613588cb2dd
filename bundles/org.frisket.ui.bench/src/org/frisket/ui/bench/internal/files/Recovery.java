package org.frisket.ui.bench.internal.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.osgi.framework.FrameworkUtil;

/** The one recovery store of this workbench. Trouble with it is logged: it must never stand in the way of work. */
public final class Recovery {

	private static final RecoveryStore STORE = new RecoveryStore(folder());

	private Recovery() {
	}

	private static Path folder() {
		return Platform.getStateLocation(FrameworkUtil.getBundle(Recovery.class)).toPath().resolve("unsaved"); //$NON-NLS-1$
	}

	public static RecoveryStore store() {
		return STORE;
	}

	/** All jobs of which there is a copy. */
	public static List<Unsaved> all() {
		try {
			return STORE.all();
		} catch (IOException e) {
			log(e);
			return List.of();
		}
	}

	/** Drops the copy of a job. */
	public static void remove(Unsaved unsaved) {
		try {
			STORE.remove(unsaved);
		} catch (IOException e) {
			log(e);
		}
	}

	public static void log(Exception e) {
		ILog.of(Recovery.class).warn("recovery copies: " + e.getMessage(), e); //$NON-NLS-1$
	}
}
