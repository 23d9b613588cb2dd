package org.frisket.ui.bench.internal.editor;

import java.io.IOException;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.frisket.ui.bench.JobPlace;

/** Takes a job out of where it is kept while its bench stands waiting, and lays it there; the screen never waits. */
final class JobArrival {

	private final BenchEditor editor;
	private final Composite parent;
	private final JobPlace place;

	JobArrival(BenchEditor editor, Composite parent, JobPlace place) {
		this.editor = editor;
		this.parent = parent;
		this.place = place;
	}

	void begin() {
		editor.show(new MessagePage(cleared(), NLS.bind(Messages.JobArrival_waiting, place.name()), place.toolTip()));
		parent.layout(true, true);
		Display display = parent.getDisplay();
		Job.create(NLS.bind(Messages.JobArrival_waiting, place.name()), (ICoreRunnable) monitor -> {
			try {
				BenchDocument document = BenchDocument.of(place, place.load());
				tell(display, () -> editor.arrived(document, cleared()));
			} catch (IOException e) {
				tell(display, () -> failed(e.getMessage()));
			}
		}).schedule();
	}

	private void tell(Display display, Runnable news) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				if (!parent.isDisposed()) {
					news.run();
					parent.layout(true, true);
				}
			});
		}
	}

	private void failed(String reason) {
		editor.show(new MessagePage(cleared(), Messages.BenchEditor_couldNotOpen, reason, Messages.JobArrival_advice,
				Messages.SavePlace_again, this::begin));
	}

	private Composite cleared() {
		for (Control child : parent.getChildren()) {
			child.dispose();
		}
		return parent;
	}
}
