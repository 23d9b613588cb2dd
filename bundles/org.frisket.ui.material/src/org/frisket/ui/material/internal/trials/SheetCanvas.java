package org.frisket.ui.material.internal.trials;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.frisket.material.trials.CellPlace;
import org.frisket.material.trials.Verdict;
import org.frisket.ui.material.internal.machines.RoomIcon;

/** The picture of a sheet, gone through with arrows or the mouse. */
public final class SheetCanvas extends Canvas {

	/** What is asked for here. */
	interface Client {

		/** Judge the cell that is looked at; empty takes its verdict away. */
		void judge(Optional<Verdict> verdict);

		/** Whether keys are meant for cells from now on. */
		void listens(boolean now);

		/** A cell in words. */
		String words();
	}

	private final SheetModel model;
	private final SheetPainter painter;

	SheetCanvas(Composite parent, SheetModel model, Client client) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
		this.model = model;
		painter = new SheetPainter(model);
		addListener(SWT.Paint, event -> painter.paint(event.gc, getClientArea(), isFocusControl()));
		addListener(SWT.Resize, event -> redraw());
		addListener(SWT.MouseDown, this::pressed);
		addListener(SWT.KeyDown, event -> key(event.keyCode));
		addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
				|| event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
		addListener(SWT.FocusIn, event -> {
			client.listens(true);
			redraw();
		});
		addListener(SWT.FocusOut, event -> {
			client.listens(false);
			redraw();
		});
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = client.words();
			}
		});
		makeMenu(client);
	}

	private void makeMenu(Client client) {
		Menu menu = new Menu(this);
		for (Verdict verdict : Verdict.values()) {
			MenuItem item = new MenuItem(menu, SWT.PUSH);
			item.setText(verdict.text());
			item.setImage(RoomIcon.of(verdict).image(this));
			item.addListener(SWT.Selection, event -> client.judge(Optional.of(verdict)));
		}
		MenuItem none = new MenuItem(menu, SWT.PUSH);
		none.setText(Messages.SheetCanvas_none);
		none.setImage(RoomIcon.NONE.image(this));
		none.addListener(SWT.Selection, event -> client.judge(Optional.empty()));
		menu.addListener(SWT.Show, event -> {
			for (MenuItem item : menu.getItems()) {
				item.setEnabled(model.isOpen());
			}
		});
		setMenu(menu);
	}

	private int caption() {
		GC gc = new GC(this);
		Font font = getFont();
		gc.setFont(font);
		int line = gc.getFontMetrics().getHeight();
		gc.dispose();
		return SheetPainter.CAPTION_LINES * line;
	}

	/** Where a cell is seen, for what points at it. */
	public Rectangle bounds(CellPlace place) {
		return painter.cell(place, getClientArea(), caption());
	}

	private void pressed(Event event) {
		setFocus();
		if (model.sheet() == null) {
			return;
		}
		int caption = caption();
		for (CellPlace place : model.sheet().places()) {
			if (painter.cell(place, getClientArea(), caption).contains(event.x, event.y)) {
				model.go(place.column(), place.row());
			}
		}
	}

	private void key(int code) {
		CellPlace at = model.at();
		switch (code) {
		case SWT.ARROW_LEFT -> model.go(at.column() - 1, at.row());
		case SWT.ARROW_RIGHT -> model.go(at.column() + 1, at.row());
		case SWT.ARROW_UP -> model.go(at.column(), at.row() - 1);
		case SWT.ARROW_DOWN -> model.go(at.column(), at.row() + 1);
		case SWT.HOME -> model.go(0, at.row());
		case SWT.END -> model.go(Integer.MAX_VALUE, at.row());
		case SWT.PAGE_UP -> model.go(at.column(), 0);
		case SWT.PAGE_DOWN -> model.go(at.column(), Integer.MAX_VALUE);
		default -> {
			// letters and figures are for commands
		}
		}
	}
}
