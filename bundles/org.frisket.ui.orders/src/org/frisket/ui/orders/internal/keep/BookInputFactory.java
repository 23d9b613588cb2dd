package org.frisket.ui.orders.internal.keep;

import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.ui.IElementFactory;
import org.eclipse.ui.IMemento;
import org.frisket.ui.bench.PlaceInput;

/** Remembers from one session to the next which jobs of the order book were open. */
public final class BookInputFactory implements IElementFactory {

	static final String ID = "org.frisket.ui.orders.bookInputs"; //$NON-NLS-1$

	@Override
	public IAdaptable createElement(IMemento memento) {
		String key = memento.getString(PlaceInput.KEY);
		return key == null ? null : BookPlace.of(key).map(PlaceInput::new).orElse(null);
	}
}
