package org.frisket.ui.bench.internal.screen;

import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences.IPreferenceChangeListener;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Monitor;
import org.frisket.ui.bench.internal.files.BenchPreferences;
import org.osgi.service.prefs.BackingStoreException;

/**
 * What was measured of each screen of this desk. The window system gives screens no names, so that one is known by
 * where it stands among the others, its size and its zoom.
 */
public final class Screens {

	private static final String NODE = "screens"; //$NON-NLS-1$

	private Screens() {
	}

	/** The screen that a control is seen on, as it was measured, or else as the window system says. */
	public static Calibration of(Control control) {
		return measured(control.getMonitor())
				.orElseGet(() -> Calibration.ofResolution(control.getDisplay().getDPI().x));
	}

	/** As it was measured; empty if it never was. */
	public static Optional<Calibration> measured(Monitor screen) {
		double pixelsPerMm = node().getDouble(key(screen), 0);
		return Calibration.isPlausible(pixelsPerMm) ? Optional.of(new Calibration(pixelsPerMm)) : Optional.empty();
	}

	public static void keep(Monitor screen, Calibration calibration) {
		node().putDouble(key(screen), calibration.pixelsPerMm());
		flush();
	}

	public static void forget(Monitor screen) {
		node().remove(key(screen));
		flush();
	}

	/** Calls the listener when a screen is measured or forgotten, until what is returned is run. */
	public static Runnable whenChanged(Runnable listener) {
		IPreferenceChangeListener onChange = event -> listener.run();
		IEclipsePreferences node = node();
		node.addPreferenceChangeListener(onChange);
		return () -> node.removePreferenceChangeListener(onChange);
	}

	private static String key(Monitor screen) {
		Rectangle bounds = screen.getBounds();
		return "%d,%d %dx%d %d%%" //$NON-NLS-1$
				.formatted(bounds.x, bounds.y, bounds.width, bounds.height, screen.getZoom());
	}

	private static IEclipsePreferences node() {
		return (IEclipsePreferences) InstanceScope.INSTANCE.getNode(BenchPreferences.NODE).node(NODE);
	}

	private static void flush() {
		try {
			node().flush();
		} catch (BackingStoreException e) {
			ILog.of(Screens.class).error(Messages.Screens_notKept, e);
		}
	}
}
