package org.frisket.ui.bench.internal.files;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.AbstractPreferenceInitializer;
import org.eclipse.core.runtime.preferences.DefaultScope;
import org.frisket.model.PreviewColours;
import org.frisket.ui.bench.internal.surface.GridStep;
import org.frisket.ui.bench.internal.surface.SurfaceOption;

/** What the user may set about the bench. */
public final class BenchPreferences extends AbstractPreferenceInitializer {

	public static final String NODE = "org.frisket.ui.bench"; //$NON-NLS-1$

	/** The longest that a change waits for its recovery copy, in seconds. */
	public static final String AUTOSAVE_SECONDS = "autosaveSeconds"; //$NON-NLS-1$

	/** What the first layer of a new job is called; empty for the usual name. */
	public static final String STOCK_NAME = "stockName"; //$NON-NLS-1$

	/** The colour of a new job's stock, as {@code red,green,blue}. */
	public static final String STOCK_COLOUR = "stockColour"; //$NON-NLS-1$

	public static final int AUTOSAVE_LEAST = 1;
	public static final int AUTOSAVE_MOST = 600;

	private static final int AUTOSAVE_DEFAULT = 10;
	private static final Pattern RGB = Pattern.compile("(\\d{1,3}),(\\d{1,3}),(\\d{1,3})"); //$NON-NLS-1$
	private static final int BRIGHTEST = 255;

	@Override
	public void initializeDefaultPreferences() {
		DefaultScope.INSTANCE.getNode(NODE).putInt(AUTOSAVE_SECONDS, AUTOSAVE_DEFAULT);
		for (SurfaceOption option : SurfaceOption.values()) {
			DefaultScope.INSTANCE.getNode(NODE).putBoolean(option.key(), option.isUsuallyOn());
		}
		for (GridStep step : GridStep.values()) {
			DefaultScope.INSTANCE.getNode(NODE).put(step.key(), step.usual());
		}
		DefaultScope.INSTANCE.getNode(NODE).put(STOCK_COLOUR, triple(PreviewColours.WORDING));
	}

	/** What the first layer of a new job is called, or else the usual name. */
	public static String stockName(String usual) {
		String name = Platform.getPreferencesService().getString(NODE, STOCK_NAME, "", null).strip(); //$NON-NLS-1$
		return name.isEmpty() ? usual : name;
	}

	/** The colour of a new job's stock as {@code #rrggbb}. */
	public static String stockColour() {
		Matcher parts = RGB.matcher(Platform.getPreferencesService().getString(NODE, STOCK_COLOUR, "", null)); //$NON-NLS-1$
		if (!parts.matches()) {
			return PreviewColours.WORDING;
		}
		return String.format("#%02x%02x%02x", part(parts, 1), part(parts, 2), part(parts, 3)); //$NON-NLS-1$
	}

	private static String triple(String hex) {
		int rgb = Integer.parseInt(hex.substring(1), 16);
		return (rgb >> 16) + "," + (rgb >> 8 & BRIGHTEST) + "," + (rgb & BRIGHTEST); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static int part(Matcher parts, int group) {
		return Math.min(BRIGHTEST, Integer.parseInt(parts.group(group)));
	}

	public static int autosaveSeconds() {
		int seconds = Platform.getPreferencesService().getInt(NODE, AUTOSAVE_SECONDS, AUTOSAVE_DEFAULT, null);
		return Math.max(AUTOSAVE_LEAST, Math.min(AUTOSAVE_MOST, seconds));
	}
}
