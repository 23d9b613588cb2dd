package org.frisket.ui.views.internal.properties;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.RegionMeasures;
import org.frisket.prepare.PreparedElement;

/** Measures elements in the background, those asked for last first; what is no longer the latest is not measured at all. */
final class MeasuresMade {

	private static final int KEPT = 64;

	/** Equal shapes at equal places are the same objects as long as nothing of them is changed. */
	private record Shape(Region region, List<Contour> lines) {
	}

	private final Map<Shape, RegionMeasures> made = new LinkedHashMap<>(16, 0.75f, true) {
		private static final long serialVersionUID = 1;

		@Override
		protected boolean removeEldestEntry(Map.Entry<Shape, RegionMeasures> eldest) {
			return size() > KEPT;
		}
	};
	private final Deque<Shape> wanted = new ArrayDeque<>();
	private final Job job = Job.createSystem(Messages.MeasureForm_title, (ICoreRunnable) this::make);
	private final Display display;
	private final Runnable changed;
	private volatile boolean closed;

	/** @param changed run on the UI thread when there are more */
	MeasuresMade(Display display, Runnable changed) {
		this.display = display;
		this.changed = changed;
		job.setPriority(Job.SHORT);
	}

	/** What an element measures; null while it is not known, which asks for it. */
	synchronized RegionMeasures of(PreparedElement element) {
		Shape shape = new Shape(element.region(), element.lines());
		RegionMeasures known = made.get(shape);
		if (known == null && !closed && !wanted.contains(shape)) {
			wanted.addFirst(shape);
			if (wanted.size() > KEPT) {
				wanted.removeLast();
			}
			job.schedule();
		}
		return known;
	}

	private void make(IProgressMonitor monitor) {
		for (Shape shape = next(); shape != null && !monitor.isCanceled(); shape = next()) {
			RegionMeasures measures;
			try {
				measures = RegionMeasures.of(shape.region(), shape.lines(), Tolerance.DEFAULT, Memory.NONE,
						() -> closed || monitor.isCanceled());
			} catch (CancellationException e) {
				return;
			}
			synchronized (this) {
				made.put(shape, measures);
			}
			if (!display.isDisposed()) {
				display.asyncExec(this::tell);
			}
		}
	}

	private synchronized Shape next() {
		return wanted.pollFirst();
	}

	private void tell() {
		if (!closed) {
			changed.run();
		}
	}

	synchronized void close() {
		closed = true;
		wanted.clear();
		job.cancel();
	}
}
