package org.frisket.ui.views.internal.fonts;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Outline;
import org.frisket.typography.FontEntry;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.UnreadableFontException;

/**
 * Words set in fonts, as the fonts' own outlines with capitals 1 high on a baseline at 0. They are made in the
 * background, those asked for last first, and kept; what has been scrolled past long ago is not made at all.
 */
public final class FontSamples {

	private static final int KEPT = 600;
	private static final int WAITING = 48;

	private record Key(FontEntry font, String words) {
	}

	private final Display display;
	private final Runnable changed;
	private final Job job;
	private final Deque<Key> wanted = new ArrayDeque<>();
	private final Map<Key, Outline> made = new LinkedHashMap<>(16, 0.75f, true) {
		private static final long serialVersionUID = 1;

		@Override
		protected boolean removeEldestEntry(Map.Entry<Key, Outline> eldest) {
			return size() > KEPT;
		}
	};
	private boolean told;

	/** @param changed run on the UI thread when there are more samples */
	public FontSamples(Display display, Runnable changed) {
		this.display = display;
		this.changed = changed;
		job = Job.createSystem(Messages.FontSamples_job, (ICoreRunnable) this::make);
		job.setPriority(Job.SHORT);
	}

	/** The words in a font; null while they are not made, empty if the font cannot be read or has none of them. */
	public synchronized Outline sample(FontEntry font, String words) {
		Key key = new Key(font, words);
		Outline known = made.get(key);
		if (known == null) {
			wanted.remove(key);
			wanted.addFirst(key);
			if (wanted.size() > WAITING) {
				wanted.removeLast();
			}
			job.schedule();
		}
		return known;
	}

	private void make(IProgressMonitor monitor) {
		for (Key key = next(); key != null && !monitor.isCanceled(); key = next()) {
			Outline outline = outline(key, monitor);
			synchronized (this) {
				made.put(key, outline);
				if (!told && !display.isDisposed()) {
					told = true;
					display.asyncExec(this::tell);
				}
			}
		}
	}

	private synchronized Key next() {
		Key key = wanted.pollFirst();
		while (key != null && made.containsKey(key)) {
			key = wanted.pollFirst();
		}
		return key;
	}

	private static Outline outline(Key key, IProgressMonitor monitor) {
		try {
			return TextSetter.set(key.words(), key.font().open(), Setting.ofCapHeight(1), monitor::isCanceled).outline();
		} catch (UnreadableFontException e) {
			return Outline.EMPTY;
		}
	}

	private void tell() {
		synchronized (this) {
			told = false;
		}
		changed.run();
	}

	/** Makes no more. */
	public void close() {
		synchronized (this) {
			wanted.clear();
		}
		job.cancel();
	}
}
