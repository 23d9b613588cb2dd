package org.frisket.ui.orders.internal.book;

import java.util.function.IntConsumer;

import org.eclipse.core.runtime.ListenerList;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.widgets.Display;
import org.frisket.orders.Entry;

/** Tells the workbench which jobs are selected in the table; once for all that happens in one go. */
final class BookSelection implements ISelectionProvider {

	private final ListenerList<ISelectionChangedListener> listeners = new ListenerList<>();
	private final BookGrid grid;
	private final IntConsumer counted;
	private IStructuredSelection told = StructuredSelection.EMPTY;
	/** What is selected now; null if that is not known. */
	private IStructuredSelection now;
	private boolean due;

	/** @param counted told how many are selected */
	BookSelection(BookGrid grid, IntConsumer counted) {
		this.grid = grid;
		this.counted = counted;
	}

	/** Something else may be selected, or say something else. */
	void changed() {
		now = null;
		if (!due) {
			due = true;
			Display.getCurrent().asyncExec(() -> {
				due = false;
				if (!grid.table().isDisposed()) {
					tell();
				}
			});
		}
	}

	private void tell() {
		IStructuredSelection jobs = jobs();
		counted.accept(jobs.size());
		if (!jobs.equals(told)) {
			told = jobs;
			listeners.forEach(listener -> listener.selectionChanged(new SelectionChangedEvent(this, jobs)));
		}
	}

	/** Gathered once for all who ask: it may be all of the book. */
	private IStructuredSelection jobs() {
		if (now == null) {
			now = new StructuredSelection(grid.selection());
		}
		return now;
	}

	/** How many are selected. */
	int size() {
		return jobs().size();
	}

	@Override
	public ISelection getSelection() {
		return jobs();
	}

	@Override
	public void setSelection(ISelection selection) {
		if (selection instanceof IStructuredSelection jobs && jobs.getFirstElement() instanceof Entry job) {
			grid.select(job.number());
		}
	}

	@Override
	public void addSelectionChangedListener(ISelectionChangedListener listener) {
		listeners.add(listener);
	}

	@Override
	public void removeSelectionChangedListener(ISelectionChangedListener listener) {
		listeners.remove(listener);
	}
}
