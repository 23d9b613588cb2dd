package org.frisket.ui.views.internal.stack;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPartSite;
import org.frisket.ui.views.internal.TextKeys;

/** Words of a row while they are typed, in their place. Enter takes them, Escape leaves the old ones. */
final class RowName {

	private final StackCanvas canvas;
	private final TextKeys keys;
	private Text text;
	private Row row;
	private Consumer<String> taker;

	RowName(StackCanvas canvas, IWorkbenchPartSite site) {
		this.canvas = canvas;
		keys = new TextKeys(site);
	}

	/**
	 * @param words what stands there at first
	 * @param hint  what is seen while nothing stands there
	 */
	void open(Row renamed, String words, String hint, Consumer<String> taken) {
		close();
		row = renamed;
		taker = taken;
		text = new Text(canvas, SWT.SINGLE | SWT.BORDER);
		text.setText(words == null ? "" : words); //$NON-NLS-1$
		text.setMessage(hint);
		text.selectAll();
		place();
		text.setFocus();
		keys.activate();
		text.addListener(SWT.Traverse, this::traversed);
		text.addListener(SWT.FocusOut, event -> commit());
	}

	/** Follows the row; gives up if it is not there any more. */
	void place() {
		if (text != null && canvas.rows().contains(row)) {
			Rectangle place = canvas.nameOf(row);
			Point size = text.computeSize(place.width, SWT.DEFAULT);
			text.setBounds(place.x, place.y + (place.height - size.y) / 2, place.width, size.y);
		} else {
			close();
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

	/** Takes what was typed. */
	void commit() {
		if (text != null) {
			String typed = text.getText().strip();
			close();
			taker.accept(typed);
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
