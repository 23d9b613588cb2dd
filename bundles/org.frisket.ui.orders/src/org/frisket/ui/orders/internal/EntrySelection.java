package org.frisket.ui.orders.internal;

import java.util.Collection;

import org.eclipse.core.runtime.ListenerList;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.frisket.orders.Entry;

/** The jobs that are selected in a view that has no viewer, for whoever follows them. */
public final class EntrySelection implements ISelectionProvider {

	private final ListenerList<ISelectionChangedListener> listeners = new ListenerList<>();
	private IStructuredSelection selection = StructuredSelection.EMPTY;

	public void select(Collection<Entry> jobs) {
		setSelection(new StructuredSelection(jobs.toArray()));
	}

	/** @param job null for none */
	public void selectOne(Entry job) {
		setSelection(job == null ? StructuredSelection.EMPTY : new StructuredSelection(job));
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
		if (now instanceof IStructuredSelection jobs && !jobs.equals(selection)) {
			selection = jobs;
			SelectionChangedEvent event = new SelectionChangedEvent(this, selection);
			listeners.forEach(listener -> listener.selectionChanged(event));
		}
	}
}
