package org.frisket.ui.orders.internal.book;

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
	private IStructuredSelection told = StructuredSelection.EMPTY;
	private boolean due;

	BookSelection(BookGrid grid) {
		this.grid = grid;
	}

	/** Something else may be selected, or say something else. */
	void changed() {
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
		IStructuredSelection now = (IStructuredSelection) getSelection();
		if (!now.equals(told)) {
			told = now;
			listeners.forEach(listener -> listener.selectionChanged(new SelectionChangedEvent(this, now)));
		}
	}

	@Override
	public ISelection getSelection() {
		return new StructuredSelection(grid.selection());
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
