package org.frisket.ui.bench;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.frisket.studio.Studio;

/** The studio folder as the user of this workbench has chosen it. */
public final class StudioChoice {

	/** Where the choice is kept. */
	public static final String NODE = "org.frisket.ui.bench"; //$NON-NLS-1$

	/** The key of the choice; empty for the usual folder. */
	public static final String KEY = "studioFolder"; //$NON-NLS-1$

	private StudioChoice() {
	}

	/** From now on the workbench works for the studio that is chosen; call it before fonts are asked for. */
	public static void apply() {
		Studio.choose(folder(InstanceScope.INSTANCE.getNode(NODE).get(KEY, ""))); //$NON-NLS-1$
	}

	private static Optional<Path> folder(String text) {
		try {
			return text.isBlank() ? Optional.empty() : Optional.of(Path.of(text.strip()));
		} catch (InvalidPathException e) {
			ILog.of(StudioChoice.class).warn("not the name of a folder: " + text, e); //$NON-NLS-1$
			return Optional.empty();
		}
	}
}
