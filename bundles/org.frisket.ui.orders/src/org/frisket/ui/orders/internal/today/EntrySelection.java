package org.frisket.ui.orders.internal.today;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.frisket.orders.Entry;

/** Tells the workbench which job the cursor is on. */
final class EntrySelection implements ISelectionProvider {

	private final List<ISelectionChangedListener> listeners = new CopyOnWriteArrayList<>();
	private IStructuredSelection selection = StructuredSelection.EMPTY;

	void select(Optional<Entry> entry) {
		setSelection(entry.<IStructuredSelection>map(StructuredSelection::new).orElse(StructuredSelection.EMPTY));
	}

	@Override
	public void addSelectionChangedListener(ISelectionChangedListener listener) {
		listeners.add(listener);
	}

	@Override
	public void removeSelectionChangedListener(ISelectionChangedListener listener) {
		listeners.remove(listener);
	}

	@Override
	public ISelection getSelection() {
		return selection;
	}

	@Override
	public void setSelection(ISelection now) {
		if (now instanceof IStructuredSelection entries && !entries.equals(selection)) {
			selection = entries;
			listeners.forEach(listener -> listener.selectionChanged(new SelectionChangedEvent(this, selection)));
		}
	}
}
