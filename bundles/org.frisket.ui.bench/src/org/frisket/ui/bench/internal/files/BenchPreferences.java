package org.frisket.ui.bench.internal.files;

import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.AbstractPreferenceInitializer;
import org.eclipse.core.runtime.preferences.DefaultScope;
import org.frisket.ui.bench.internal.surface.GridStep;
import org.frisket.ui.bench.internal.surface.SurfaceOption;

/** What the user may set about the bench. */
public final class BenchPreferences extends AbstractPreferenceInitializer {

	public static final String NODE = "org.frisket.ui.bench"; //$NON-NLS-1$

	/** The longest that a change waits for its recovery copy, in seconds. */
	public static final String AUTOSAVE_SECONDS = "autosaveSeconds"; //$NON-NLS-1$

	public static final int AUTOSAVE_LEAST = 1;
	public static final int AUTOSAVE_MOST = 600;

	private static final int AUTOSAVE_DEFAULT = 10;

	@Override
	public void initializeDefaultPreferences() {
		DefaultScope.INSTANCE.getNode(NODE).putInt(AUTOSAVE_SECONDS, AUTOSAVE_DEFAULT);
		for (SurfaceOption option : SurfaceOption.values()) {
			DefaultScope.INSTANCE.getNode(NODE).putBoolean(option.key(), option.isUsuallyOn());
		}
		for (GridStep step : GridStep.values()) {
			DefaultScope.INSTANCE.getNode(NODE).put(step.key(), step.usual());
		}
	}

	public static int autosaveSeconds() {
		int seconds = Platform.getPreferencesService().getInt(NODE, AUTOSAVE_SECONDS, AUTOSAVE_DEFAULT, null);
		return Math.max(AUTOSAVE_LEAST, Math.min(AUTOSAVE_MOST, seconds));
	}
}
