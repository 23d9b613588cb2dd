package org.frisket.ui.orders.internal.week;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.frisket.orders.Entry;
import org.frisket.orders.week.WeekPlan;
import org.frisket.ui.orders.internal.ListAccess;

/** The week as columns of cards. Only what is seen is painted, however much is due. */
public final class WeekStrip extends Canvas {

	/** Who is told what is done with a job. */
	interface Client {

		void selected(Entry entry);

		void opened(Entry entry);

		/** It was put on another day. */
		void moved(Entry entry, LocalDate to);
	}

	/** A press that goes no further is a click, in pixels. */
	private static final int STILL_PX = 5;

	private final Client client;
	private final ListAccess access;
	private final WeekPainter painter = new WeekPainter(this);
	private WeekPlan plan = WeekPlan.of(List.of(), LocalDate.EPOCH);
	private String hint = ""; //$NON-NLS-1$
	private WeekPlan.Place selected;
	private Point pressed;
	/** The column over which a card is held; -1 for none. */
	private int over = -1;

	WeekStrip(Composite parent, Client client) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.V_SCROLL | SWT.NO_REDRAW_RESIZE);
		this.client = client;
		addListener(SWT.Paint, event -> painter.paint(event.gc, plan, hint, selected, over));
		addListener(SWT.Resize, event -> fit());
		addListener(SWT.MouseDown, this::mouseDown);
		addListener(SWT.MouseMove, this::mouseMove);
		addListener(SWT.MouseUp, this::mouseUp);
		addListener(SWT.MouseDoubleClick, event -> at(event.x, event.y)
				.ifPresent(place -> client.opened(plan.job(place))));
		addListener(SWT.KeyDown, this::key);
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		addListener(SWT.MouseVerticalWheel, event -> getDisplay().asyncExec(() -> {
			if (!isDisposed()) {
				redraw();
			}
		}));
		getVerticalBar().addListener(SWT.Selection, event -> redraw());
		access = ListAccess.install(this, new WeekAccess(this));
	}

	/** @param hint said where nothing is listed */
	void show(WeekPlan now, String why) {
		long number = selected == null ? 0 : plan.job(selected).number();
		hint = why;
		plan = now;
		selected = plan.find(number).orElse(null);
		fit();
		redraw();
	}

	private void fit() {
		int rows = plan.columns().stream().mapToInt(column -> column.jobs().size() + (column.more() > 0 ? 1 : 0)).max()
				.orElse(0);
		int page = Math.max(1, getClientArea().height - painter.headHeight());
		int all = rows * painter.cardHeight();
		getVerticalBar().setVisible(all > page);
		getVerticalBar().setValues(Math.min(getVerticalBar().getSelection(), Math.max(0, all - page)), 0,
				Math.max(1, all),
				Math.min(page, Math.max(1, all)), painter.cardHeight(), page);
		redraw();
	}

	/** By how many pixels the cards are moved up. */
	int scrolled() {
		return getVerticalBar().isVisible() ? getVerticalBar().getSelection() : 0;
	}

	public WeekPlan plan() {
		return plan;
	}

	/** Where the job that is selected here is; empty for none. */
	Optional<WeekPlan.Place> place() {
		return Optional.ofNullable(selected);
	}

	/** What those are told who listen. @param child a card from 0; -1 for the selected one */
	public String said(int child) {
		return access.said(child);
	}

	/** The job that is selected here. */
	public Optional<Entry> selected() {
		return Optional.ofNullable(selected).map(plan::job);
	}

	/** Where the card of a place is, in pixels of the control. */
	public Rectangle boundsOf(WeekPlan.Place place) {
		return painter.card(place);
	}

	/** Selects the job with a number, if it is listed; else nothing is. @param tell whether others follow */
	void select(long number, boolean tell) {
		select(plan.find(number).orElse(null), tell);
	}

	private void select(WeekPlan.Place place, boolean tell) {
		selected = place;
		if (place != null) {
			reveal(place);
			if (tell) {
				client.selected(plan.job(place));
			}
			access.moved();
		}
		redraw();
	}

	private void reveal(WeekPlan.Place place) {
		Rectangle card = painter.card(place);
		int below = card.y + card.height - getClientArea().height;
		int above = painter.headHeight() - card.y;
		if (above > 0) {
			getVerticalBar().setSelection(getVerticalBar().getSelection() - above);
		} else if (below > 0) {
			getVerticalBar().setSelection(getVerticalBar().getSelection() + below);
		}
	}

	private Optional<WeekPlan.Place> at(int x, int y) {
		int column = painter.columnAt(x);
		int row = Math.floorDiv(y - painter.headHeight() + scrolled(), painter.cardHeight());
		return y >= painter.headHeight() && column >= 0 && row >= 0 && row < plan.columns().get(column).jobs().size()
				? Optional.of(new WeekPlan.Place(column, row))
				: Optional.empty();
	}

	private void mouseDown(Event event) {
		setFocus();
		if (event.button == 1) {
			Optional<WeekPlan.Place> hit = at(event.x, event.y);
			hit.ifPresent(place -> select(place, true));
			pressed = hit.isPresent() ? new Point(event.x, event.y) : null;
		}
	}

	private void mouseMove(Event event) {
		if (pressed != null && (over >= 0 || Math.abs(event.x - pressed.x) > STILL_PX)) {
			int column = painter.columnAt(event.x);
			int now = column >= 0 && plan.columns().get(column).day().isPresent() ? column : -1;
			if (now != over) {
				over = now;
				setCursor(getDisplay().getSystemCursor(now >= 0 ? SWT.CURSOR_HAND : SWT.CURSOR_NO));
				redraw();
			}
		}
	}

	private void mouseUp(Event event) {
		boolean dragged = pressed != null && Math.abs(event.x - pressed.x) > STILL_PX;
		int column = painter.columnAt(event.x);
		letGo();
		if (dragged && selected != null && column >= 0 && column != selected.column()) {
			plan.columns().get(column).day().ifPresent(day -> client.moved(plan.job(selected), day));
		}
	}

	private void letGo() {
		pressed = null;
		over = -1;
		setCursor(null);
		redraw();
	}

	private void key(Event event) {
		boolean shift = (event.stateMask & SWT.SHIFT) != 0;
		switch (event.keyCode) {
		case SWT.ARROW_DOWN -> along(1);
		case SWT.ARROW_UP -> along(-1);
		case SWT.PAGE_DOWN -> along(page());
		case SWT.PAGE_UP -> along(-page());
		case SWT.HOME -> along(-plan.size());
		case SWT.END -> along(plan.size());
		case SWT.ARROW_RIGHT -> across(1, shift);
		case SWT.ARROW_LEFT -> across(-1, shift);
		case SWT.ESC -> letGo();
		case SWT.CR, SWT.KEYPAD_CR -> selected().ifPresent(client::opened);
		case SWT.TAB -> traverse(shift ? SWT.TRAVERSE_TAB_PREVIOUS : SWT.TRAVERSE_TAB_NEXT);
		default -> {
			// not for the week
		}
		}
	}

	private int page() {
		return Math.max(1, (getClientArea().height - painter.headHeight()) / painter.cardHeight());
	}

	private void along(int rows) {
		if (selected != null) {
			select(plan.along(selected, rows), true);
		} else {
			plan.first().ifPresent(place -> select(place, true));
		}
	}

	/** @param carry whether the job is put on the next day and not the next one selected */
	private void across(int step, boolean carry) {
		if (selected == null) {
			plan.first().ifPresent(place -> select(place, true));
		} else if (carry) {
			int column = selected.column() + step;
			if (column >= 0 && column < plan.columns().size()) {
				plan.columns().get(column).day().ifPresent(day -> client.moved(plan.job(selected), day));
			}
		} else {
			plan.beside(selected, step).ifPresent(place -> select(place, true));
		}
	}
}
