package org.frisket.ui.sheets.internal.run;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.frisket.run.play.Moment;
import org.frisket.run.play.Player;
import org.frisket.ui.ThemeColour;

/** The picture of a run; a click on a line goes to its stroke. */
public final class RunCanvas extends Canvas {

	/** What is asked for here. */
	interface Client {

		/** Go to a time of the run, in seconds. */
		void seek(double seconds);

		/** A key that is for moving in time. */
		boolean key(int code);

		/** Whether keys are meant for the run from now on. */
		void listens(boolean now);

		/** The moment in words. */
		String words();
	}

	private static final int REACH_PX = 6;

	private final Player player;
	private final Client client;
	private final RunPainter painter = new RunPainter();
	private SheetRun run;
	private Moment seen;
	private boolean travel = true;

	RunCanvas(Composite parent, Player player, Client client) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
		this.player = player;
		this.client = client;
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.Resize, event -> redraw());
		addListener(SWT.MouseDown, this::pressed);
		addListener(SWT.KeyDown, event -> client.key(event.keyCode));
		addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
				|| event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
		addListener(SWT.FocusIn, event -> focus(true));
		addListener(SWT.FocusOut, event -> focus(false));
		addListener(SWT.Dispose, event -> painter.dispose());
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = client.words();
			}
		});
	}

	private void focus(boolean now) {
		client.listens(now);
		redraw();
	}

	/** Null for none. */
	void show(SheetRun shown) {
		run = shown;
		seen = null;
		redraw();
	}

	void showTravel(boolean shown) {
		if (travel != shown) {
			travel = shown;
			redraw();
		}
	}

	/** The player has moved on. No more is painted than has changed. */
	void refresh() {
		if (run == null) {
			return;
		}
		Moment now = player.now();
		if (seen == null || now.done() < seen.done() || now.seconds() < seen.seconds()) {
			redraw();
		} else if (!now.equals(seen) && run.playback().size() > 0) {
			GC gc = new GC(this);
			Rectangle changed = painter.between(gc, run.playback(), seen, now);
			gc.dispose();
			redraw(changed.x, changed.y, changed.width, changed.height, false);
		}
		seen = now;
	}

	private void paint(GC gc) {
		Rectangle area = getClientArea();
		if (run == null) {
			gc.setBackground(ThemeColour.BENCH_DESK.colour());
			gc.fillRectangle(area);
			return;
		}
		painter.paint(gc, area, run, player.now(), travel);
		if (isFocusControl()) {
			gc.setForeground(ThemeColour.BENCH_ACCENT.colour());
			gc.setLineWidth(2);
			gc.drawRectangle(1, 1, area.width - 2, area.height - 2);
		}
	}

	private void pressed(Event event) {
		setFocus();
		if (run != null && event.button == 1) {
			SheetFrame frame = painter.frame();
			run.playback().near(frame.mm(event.x, event.y), REACH_PX / frame.scale())
					.ifPresent(stroke -> client.seek(run.playback().timeOf(stroke)));
		}
	}

	/** Where a place of the sheet is seen, for what points at it. */
	public Point pixelOf(double x, double y) {
		SheetFrame frame = painter.frame();
		return new Point((int) Math.round(frame.x(x)), (int) Math.round(frame.y(y)));
	}
}
