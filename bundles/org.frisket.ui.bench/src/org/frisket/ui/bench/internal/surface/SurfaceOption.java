package org.frisket.ui.bench.internal.surface;

import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.IEclipsePreferences.IPreferenceChangeListener;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.frisket.geometry.snap.SnapKind;
import org.frisket.ui.bench.internal.files.BenchPreferences;

/** What can be switched on and off about laying out. */
public enum SurfaceOption {

	RULERS("showRulers", true), GRID("showGrid", false), GUIDES("showGuides", true), GUIDES_LOCKED("lockGuides", false),
	BOX_TOUCHES("boxTouches", false), SNAP("snap", true), SNAP_GUIDES("snapToGuides", true), SNAP_NODES("snapToNodes", true),
	SNAP_EDGES("snapToEdges", true), SNAP_CENTRES("snapToCentres", true), SNAP_GRID("snapToGrid", true);

	private final String key;
	private final boolean usual;

	SurfaceOption(String key, boolean usual) {
		this.key = key;
		this.usual = usual;
	}

	/** The key of the preference. */
	public String key() {
		return key;
	}

	/** Whether it is on when the user has chosen nothing. */
	public boolean isUsuallyOn() {
		return usual;
	}

	public boolean isOn() {
		return Platform.getPreferencesService().getBoolean(BenchPreferences.NODE, key, usual, null);
	}

	public void set(boolean on) {
		preferences().putBoolean(key, on);
	}

	/** The switch for one kind of what holds. */
	public static SurfaceOption of(SnapKind kind) {
		return switch (kind) {
		case GUIDE -> SNAP_GUIDES;
		case NODE -> SNAP_NODES;
		case EDGE -> SNAP_EDGES;
		case CENTRE -> SNAP_CENTRES;
		case GRID -> SNAP_GRID;
		};
	}

	/** Calls the listener after any change of the bench's preferences, until what is returned is run. */
	public static Runnable whenChanged(Runnable listener) {
		IPreferenceChangeListener onChange = event -> listener.run();
		IEclipsePreferences preferences = preferences();
		preferences.addPreferenceChangeListener(onChange);
		return () -> preferences.removePreferenceChangeListener(onChange);
	}

	private static IEclipsePreferences preferences() {
		return InstanceScope.INSTANCE.getNode(BenchPreferences.NODE);
	}
}
