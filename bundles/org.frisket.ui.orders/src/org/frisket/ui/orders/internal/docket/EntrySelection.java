package org.frisket.ui.orders.internal.docket;

import org.eclipse.core.commands.common.EventManager;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.frisket.orders.Entry;

/** A job as what is selected in a view that has no viewer. */
public final class EntrySelection extends EventManager implements ISelectionProvider {

	private ISelection now = StructuredSelection.EMPTY;

	/** @param entry null for none */
	public void set(Entry entry) {
		setSelection(entry == null ? StructuredSelection.EMPTY : new StructuredSelection(entry));
	}

	@Override
	public ISelection getSelection() {
		return now;
	}

	@Override
	public void setSelection(ISelection selection) {
		if (!selection.equals(now)) {
			now = selection;
			for (Object each : getListeners()) {
				((ISelectionChangedListener) each).selectionChanged(new SelectionChangedEvent(this, now));
			}
		}
	}

	@Override
	public void addSelectionChangedListener(ISelectionChangedListener listener) {
		addListenerObject(listener);
	}

	@Override
	public void removeSelectionChangedListener(ISelectionChangedListener listener) {
		removeListenerObject(listener);
	}
}
