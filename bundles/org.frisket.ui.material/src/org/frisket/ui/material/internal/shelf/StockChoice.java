package org.frisket.ui.material.internal.shelf;

import org.eclipse.core.runtime.IAdapterFactory;
import org.frisket.ui.views.StockChooser;

/** Has the stack offer what lies on the shelf when it is asked for the stock of a layer. */
public final class StockChoice implements IAdapterFactory {

	@Override
	public <T> T getAdapter(Object stack, Class<T> wanted) {
		StockChooser chooser = (bench, layer, control, place) -> new StockPopup(bench, layer, control, place);
		return wanted == StockChooser.class ? wanted.cast(chooser) : null;
	}

	@Override
	public Class<?>[] getAdapterList() {
		return new Class<?>[] { StockChooser.class };
	}
}
