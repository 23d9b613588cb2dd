package org.frisket.ui.bench.internal.files;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;

/** The job files that were opened or saved last, the latest first. */
public final class RecentJobs {

	/** How many are remembered. */
	public static final int MOST = 10;

	private static final String NODE = "recent"; //$NON-NLS-1$

	private final Preferences node;

	RecentJobs(Preferences node) {
		this.node = node;
	}

	/** Those of this workbench. */
	public static RecentJobs shared() {
		IEclipsePreferences bundle = InstanceScope.INSTANCE.getNode(BenchPreferences.NODE);
		return new RecentJobs(bundle.node(NODE));
	}

	/** The latest first; the files need not be there any more. */
	public List<Path> all() {
		List<Path> all = new ArrayList<>();
		for (int i = 0; i < MOST; i++) {
			String path = node.get(Integer.toString(i), null);
			try {
				if (path != null) {
					all.add(Path.of(path));
				}
			} catch (InvalidPathException e) {
				// written on another system: there is no such file here
			}
		}
		return all;
	}

	/** Puts a file before all others. */
	public void add(Path path) {
		List<Path> all = new ArrayList<>(all());
		all.remove(path);
		all.add(0, path);
		write(all);
	}

	/** Forgets a file. */
	public void remove(Path path) {
		List<Path> all = new ArrayList<>(all());
		all.remove(path);
		write(all);
	}

	private void write(List<Path> all) {
		for (int i = 0; i < MOST; i++) {
			if (i < all.size()) {
				node.put(Integer.toString(i), all.get(i).toString());
			} else {
				node.remove(Integer.toString(i));
			}
		}
		try {
			node.flush();
		} catch (BackingStoreException e) {
			Recovery.log(e);
		}
	}
}
