package org.frisket.ui.views.internal.stack;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPartSite;
import org.frisket.model.Layer;
import org.frisket.ui.views.internal.TextKeys;

/** The name of a layer while it is typed, in its place. Enter takes it, Escape leaves the old one. */
final class LayerName {

	private final StackCanvas canvas;
	private final TextKeys keys;
	private Text text;
	private Layer layer;

	LayerName(StackCanvas canvas, IWorkbenchPartSite site) {
		this.canvas = canvas;
		keys = new TextKeys(site);
	}

	void open(Layer renamed) {
		close();
		layer = renamed;
		text = new Text(canvas, SWT.SINGLE | SWT.BORDER);
		text.setText(layer.getName() == null ? "" : layer.getName()); //$NON-NLS-1$
		text.selectAll();
		place();
		text.setFocus();
		keys.activate();
		text.addListener(SWT.Traverse, this::traversed);
		text.addListener(SWT.FocusOut, event -> commit());
	}

	void place() {
		if (text != null) {
			Rectangle place = canvas.nameOf(layer);
			Point size = text.computeSize(place.width, SWT.DEFAULT);
			text.setBounds(place.x, place.y + (place.height - size.y) / 2, place.width, size.y);
		}
	}

	private void traversed(Event event) {
		if (event.detail == SWT.TRAVERSE_RETURN) {
			event.doit = false;
			commit();
			canvas.setFocus();
		} else if (event.detail == SWT.TRAVERSE_ESCAPE) {
			event.doit = false;
			close();
			canvas.setFocus();
		}
	}

	/** Takes what was typed, if it is a name. */
	void commit() {
		if (text != null) {
			String typed = text.getText().strip();
			Layer renamed = layer;
			close();
			canvas.renamed(renamed, typed);
		}
	}

	void close() {
		if (text != null) {
			Text closing = text;
			text = null;
			keys.deactivate();
			closing.dispose();
		}
	}
}
