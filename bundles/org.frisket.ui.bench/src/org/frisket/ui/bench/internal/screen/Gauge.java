package org.frisket.ui.bench.internal.screen;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.frisket.ui.ThemeColour;

/**
 * Something to lay a ruler or a card on: a line of so many pixels, or a card as wide. The right end of a card follows
 * the pointer and the arrow keys.
 */
final class Gauge extends Canvas {

	private static final int MARGIN_PX = 16;
	private static final int TICK_PX = 14;
	private static final int LEAST_PX = 40;
	private static final int LARGE_STEP_PX = 10;
	private static final int CORNER_PX = 12;
	private static final int LINE_WIDTH_PX = 2;

	private final Runnable changed;
	private boolean card;
	private int length;

	/** @param changed called when the user has made it longer or shorter */
	Gauge(Composite parent, int length, Runnable changed) {
		super(parent, SWT.BORDER | SWT.DOUBLE_BUFFERED);
		this.length = length;
		this.changed = changed;
		setBackground(ThemeColour.BENCH_SHEET.colour());
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.MouseDown, event -> drag(event.x));
		addListener(SWT.MouseMove, event -> {
			if ((event.stateMask & SWT.BUTTON1) != 0) {
				drag(event.x);
			}
		});
		addListener(SWT.KeyDown, this::key);
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_ARROW_NEXT
				&& event.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
	}

	/** Shows a card rather than a line. */
	void setCard(boolean isCard) {
		card = isCard;
		setCursor(isCard ? getDisplay().getSystemCursor(SWT.CURSOR_SIZEWE) : null);
		redraw();
	}

	/** In pixels. */
	int length() {
		return length;
	}

	void setLength(int pixels) {
		int most = Math.max(LEAST_PX, getClientArea().width - 2 * MARGIN_PX);
		length = Math.max(LEAST_PX, Math.min(most, pixels));
		redraw();
	}

	private void drag(int x) {
		setFocus();
		if (card) {
			setLength(x - MARGIN_PX);
			changed.run();
		}
	}

	private void key(Event event) {
		int step = (event.stateMask & SWT.SHIFT) == 0 ? 1 : LARGE_STEP_PX;
		int sign = event.keyCode == SWT.ARROW_RIGHT ? 1 : event.keyCode == SWT.ARROW_LEFT ? -1 : 0;
		if (card && sign != 0) {
			setLength(length + sign * step);
			changed.run();
		}
	}

	@Override
	public Point computeSize(int widthHint, int heightHint, boolean changedSize) {
		return new Point(Math.max(length + 2 * MARGIN_PX, widthHint),
				(int) Math.round(length * Calibration.CARD_HEIGHT / Calibration.CARD_WIDTH) + 2 * MARGIN_PX);
	}

	private void paint(GC gc) {
		gc.setAntialias(SWT.ON);
		gc.setForeground(ThemeColour.BENCH_INK.colour());
		gc.setBackground(ThemeColour.BENCH_STOCK.colour());
		int height = getClientArea().height;
		if (card) {
			int cardHeight = (int) Math.round(length * Calibration.CARD_HEIGHT / Calibration.CARD_WIDTH);
			gc.fillRoundRectangle(MARGIN_PX, MARGIN_PX, length, cardHeight, CORNER_PX, CORNER_PX);
			gc.setForeground(isFocusControl() ? ThemeColour.BENCH_SELECTION.colour() : ThemeColour.BENCH_INK.colour());
			gc.drawLine(MARGIN_PX, MARGIN_PX / 2, MARGIN_PX, height - MARGIN_PX / 2);
			gc.drawLine(MARGIN_PX + length - 1, MARGIN_PX / 2, MARGIN_PX + length - 1, height - MARGIN_PX / 2);
		} else {
			int y = height / 2;
			// the ends are the outer edges of the ticks
			gc.setBackground(ThemeColour.BENCH_INK.colour());
			gc.fillRectangle(MARGIN_PX, y - LINE_WIDTH_PX / 2, length, LINE_WIDTH_PX);
			gc.fillRectangle(MARGIN_PX, y - TICK_PX, 1, 2 * TICK_PX);
			gc.fillRectangle(MARGIN_PX + length - 1, y - TICK_PX, 1, 2 * TICK_PX);
		}
	}
}
