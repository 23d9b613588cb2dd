package org.frisket.app.internal.tour;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.keys.IBindingService;

/** What a step tells, beside the thing it is about, with the ways on: by mouse, Enter, the arrows and Escape. */
final class Callout extends Overlay {

	private static final int WIDTH_PX = 320;
	private static final int GAP_PX = 12;
	/** Nothing lower than this is a view; what is told of a button lies below it. */
	private static final int BUTTON_PX = 60;

	/** Where the tour can go from a step. */
	interface Ways {

		void next();

		void back();

		void end();
	}

	private final Button next;

	/** @param keys those of the bench, which rest while this box is listened to */
	Callout(Shell window, TourStep step, IBindingService keys, Ways ways) {
		super(window, 1);
		Label title = label(step.title(), SWT.WRAP);
		title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
		GridDataFactory.fillDefaults().grab(true, false).applyTo(title);
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH_PX, SWT.DEFAULT).applyTo(label(step.text(), SWT.WRAP));
		label(NLS.bind(Messages.Callout_step, step.number(), TourStep.values().length), SWT.NONE);
		Composite buttons = new Composite(this, SWT.NONE);
		buttons.setBackground(getBackground());
		RowLayoutFactory.fillDefaults().spacing(GAP_PX).applyTo(buttons);
		next = button(buttons, step.isLast() ? Messages.Callout_done : Messages.Callout_next, ways::next);
		Button back = button(buttons, Messages.Callout_back, ways::back);
		back.setEnabled(!step.isFirst());
		Button end = button(buttons, Messages.Callout_end, ways::end);
		for (Button button : new Button[] { next, back, end }) {
			button.addListener(SWT.Traverse, event -> key(event, ways));
			button.addListener(SWT.KeyDown, event -> enter(event, button));
			button.addListener(SWT.FocusIn, event -> keys.setKeyFilterEnabled(false));
			button.addListener(SWT.FocusOut, event -> keys.setKeyFilterEnabled(true));
		}
	}

	private static void key(Event event, Ways ways) {
		switch (event.keyCode) {
		case SWT.ESC -> {
			event.doit = false;
			ways.end();
		}
		case SWT.ARROW_RIGHT -> {
			event.doit = false;
			ways.next();
		}
		case SWT.ARROW_LEFT -> {
			event.doit = false;
			ways.back();
		}
		default -> {
			// goes its usual way
		}
		}
	}

	private static void enter(Event event, Button button) {
		if ((event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) && !button.isDisposed()) {
			button.notifyListeners(SWT.Selection, new Event());
		}
	}

	/** Lies beside what it is about, inside it where there is no room at a side. */
	void placeBeside(Rectangle thing) {
		int height = computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
		int width = computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
		Rectangle room = getShell().getClientArea();
		if (thing.height <= BUTTON_PX) {
			place(thing.x, thing.y + thing.height + GAP_PX, SWT.DEFAULT);
		} else if (thing.x - GAP_PX - width >= 0) {
			place(thing.x - GAP_PX - width, thing.y, SWT.DEFAULT);
		} else if (thing.y - GAP_PX - height >= 0) {
			place(thing.x + GAP_PX, thing.y - GAP_PX - height, SWT.DEFAULT);
		} else if (thing.x + thing.width + GAP_PX + width <= room.width) {
			place(thing.x + thing.width + GAP_PX, thing.y, SWT.DEFAULT);
		} else {
			place(thing.x + GAP_PX, thing.y + thing.height + GAP_PX, SWT.DEFAULT);
		}
	}

	@Override
	public boolean setFocus() {
		return next.setFocus();
	}
}
