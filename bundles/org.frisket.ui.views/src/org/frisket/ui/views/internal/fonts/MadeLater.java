package org.frisket.ui.views.internal.fonts;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BiFunction;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Monitor;

/**
 * What is made in the background for what is seen: those asked for last first. They are kept; what has been scrolled
 * past long ago is not made at all.
 */
final class MadeLater<K, V> {

	private final int waiting;
	private final BiFunction<K, Monitor, V> making;
	private final Display display;
	private final Runnable changed;
	private final Job job;
	private final Deque<K> wanted = new ArrayDeque<>();
	private final Map<K, V> made;
	private boolean told;
	private volatile boolean closed;

	/**
	 * @param kept    how many are kept
	 * @param waiting how many may wait to be made
	 * @param making  never null
	 * @param changed run on the UI thread when there are more
	 */
	MadeLater(String name, int kept, int waiting, BiFunction<K, Monitor, V> making, Display display, Runnable changed) {
		this.waiting = waiting;
		this.making = making;
		this.display = display;
		this.changed = changed;
		made = new LinkedHashMap<>(16, 0.75f, true) {
			private static final long serialVersionUID = 1;

			@Override
			protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
				return size() > kept;
			}
		};
		job = Job.createSystem(name, (ICoreRunnable) this::make);
		job.setPriority(Job.SHORT);
	}

	/** What was made for a key; null while it is not, which asks for it. */
	synchronized V get(K key) {
		V known = made.get(key);
		if (known == null && !closed) {
			wanted.remove(key);
			wanted.addFirst(key);
			if (wanted.size() > waiting) {
				wanted.removeLast();
			}
			job.schedule();
		}
		return known;
	}

	/** What was made for a key, without asking for it. */
	synchronized V known(K key) {
		return made.get(key);
	}

	/** Nothing is wanted any longer but what is asked for from now on. */
	synchronized void forget() {
		wanted.clear();
	}

	private void make(IProgressMonitor monitor) {
		for (K key = next(); key != null && !monitor.isCanceled(); key = next()) {
			V value;
			try {
				value = making.apply(key, () -> closed || monitor.isCanceled());
			} catch (CancellationException e) {
				return;
			}
			synchronized (this) {
				made.put(key, value);
				if (!told && !display.isDisposed()) {
					told = true;
					display.asyncExec(this::tell);
				}
			}
		}
	}

	private synchronized K next() {
		K key = wanted.pollFirst();
		while (key != null && made.containsKey(key)) {
			key = wanted.pollFirst();
		}
		return key;
	}

	private void tell() {
		synchronized (this) {
			told = false;
		}
		if (!closed) {
			changed.run();
		}
	}

	/** Makes no more. */
	void close() {
		closed = true;
		forget();
		job.cancel();
	}
}
