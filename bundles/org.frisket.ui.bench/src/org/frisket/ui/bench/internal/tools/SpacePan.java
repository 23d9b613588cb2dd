package org.frisket.ui.bench.internal.tools;

import java.util.function.BooleanSupplier;

import org.eclipse.draw2d.Cursors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Cursor;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;

/**
 * Pushes the bench about while the space bar is held and a button is pressed. Whatever tool is active, and whatever
 * lies under the pointer, notices nothing of it.
 */
public final class SpacePan {

	private static final int[] MOUSE = { SWT.MouseDown, SWT.MouseUp, SWT.MouseMove, SWT.MouseDoubleClick };

	private final Control control;
	private final CanvasZoom zoom;
	private final BooleanSupplier taken;
	private final Listener filter = this::mouse;
	private boolean held;
	private boolean dragging;
	private int lastX;
	private int lastY;
	private Cursor before;

	/** @param taken whether the space bar means a blank now */
	public SpacePan(Control control, CanvasZoom zoom, BooleanSupplier taken) {
		this.control = control;
		this.zoom = zoom;
		this.taken = taken;
		control.addListener(SWT.KeyDown, this::pressed);
		control.addListener(SWT.KeyUp, this::released);
		control.addListener(SWT.FocusOut, event -> end());
		control.addListener(SWT.Dispose, event -> end());
	}

	/** Whether the space bar is held, so that a drag pushes the bench about. */
	public boolean isHeld() {
		return held;
	}

	private void pressed(Event event) {
		if (event.keyCode != SWT.SPACE || (event.stateMask & SWT.MODIFIER_MASK) != 0 || taken.getAsBoolean()) {
			return;
		}
		event.doit = false;
		// a held key is pressed again and again
		if (!held && (event.stateMask & SWT.BUTTON_MASK) == 0) {
			held = true;
			before = control.getCursor();
			control.setCursor(Cursors.HAND);
			for (int type : MOUSE) {
				control.getDisplay().addFilter(type, filter);
			}
		}
	}

	private void released(Event event) {
		if (event.keyCode == SWT.SPACE) {
			end();
		}
	}

	private void end() {
		if (!held) {
			return;
		}
		held = false;
		dragging = false;
		Display display = Display.getCurrent();
		for (int type : MOUSE) {
			display.removeFilter(type, filter);
		}
		if (!control.isDisposed()) {
			control.setCursor(before);
		}
	}

	private void mouse(Event event) {
		if (event.widget != control) {
			return;
		}
		if (event.type == SWT.MouseMove && dragging) {
			zoom.pan(lastX - event.x, lastY - event.y);
		}
		if (event.type == SWT.MouseDown) {
			dragging = true;
		} else if (event.type == SWT.MouseUp) {
			dragging = false;
		}
		lastX = event.x;
		lastY = event.y;
		// nobody else is to take it for a click or a drag
		event.type = SWT.None;
	}
}
