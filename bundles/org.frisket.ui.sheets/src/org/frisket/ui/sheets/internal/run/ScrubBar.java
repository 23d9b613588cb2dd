package org.frisket.ui.sheets.internal.run;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.frisket.run.play.LegLine;
import org.frisket.run.play.Playback;
import org.frisket.run.play.Player;
import org.frisket.ui.ThemeColour;

/** The time of a run as a strip: its legs by pattern and hue, its stops as gaps, and a handle at what is shown. */
public final class ScrubBar extends Canvas {

	private static final int MARGIN_PX = 8;
	private static final int HIGH_PX = 28;
	private static final int KNOB_PX = 4;
	private static final int STOP_PX = 3;

	private final Player player;
	private final RunCanvas.Client client;

	ScrubBar(Composite parent, Player player, RunCanvas.Client client) {
		super(parent, SWT.DOUBLE_BUFFERED);
		this.player = player;
		this.client = client;
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.MouseDown, this::pointed);
		addListener(SWT.MouseMove, event -> {
			if ((event.stateMask & SWT.BUTTON1) != 0) {
				pointed(event);
			}
		});
		addListener(SWT.MouseUp, event -> {
			if (event.button == 1) {
				pointed(event);
			}
		});
		addListener(SWT.KeyDown, event -> client.key(event.keyCode));
		addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
				|| event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
		addListener(SWT.FocusIn, event -> focus(true));
		addListener(SWT.FocusOut, event -> focus(false));
		describe();
	}

	private void focus(boolean now) {
		client.listens(now);
		redraw();
	}

	private void describe() {
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = Messages.ScrubBar_name;
			}
		});
		getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = ACC.ROLE_SLIDER;
			}

			@Override
			public void getValue(AccessibleControlEvent event) {
				event.result = client.words();
			}
		});
	}

	@Override
	public Point computeSize(int widthHint, int heightHint, boolean changed) {
		return new Point(widthHint == SWT.DEFAULT ? 200 : widthHint, heightHint == SWT.DEFAULT ? HIGH_PX : heightHint);
	}

	private void pointed(Event event) {
		if (event.type == SWT.MouseDown) {
			setFocus();
		}
		Playback playback = player.playback();
		int width = getClientArea().width - 2 * MARGIN_PX;
		if (playback != null && width > 0 && (event.type != SWT.MouseDown || event.button == 1)) {
			client.seek((event.x - MARGIN_PX) * playback.seconds() / width);
		}
	}

	/** Where a time is seen. */
	public int pixelOf(double seconds) {
		Playback playback = player.playback();
		double share = playback == null || playback.seconds() == 0 ? 0 : seconds / playback.seconds();
		return MARGIN_PX + (int) Math.round(share * (getClientArea().width - 2 * MARGIN_PX));
	}

	private void paint(GC gc) {
		Rectangle area = getClientArea();
		int middle = area.height / 2;
		gc.setBackground(ThemeColour.BENCH_SHEET.colour());
		gc.fillRectangle(MARGIN_PX, middle - 5, area.width - 2 * MARGIN_PX, 10);
		gc.setForeground(ThemeColour.BENCH_SHEET_EDGE.colour());
		gc.drawRectangle(MARGIN_PX, middle - 5, area.width - 2 * MARGIN_PX, 10);
		if (player.playback() != null) {
			for (LegLine leg : player.playback().legs()) {
				paint(gc, leg, middle);
			}
			paintKnob(gc, pixelOf(player.seconds()), middle);
		}
		if (isFocusControl()) {
			gc.drawFocus(1, 1, area.width - 2, area.height - 2);
		}
	}

	private void paint(GC gc, LegLine leg, int middle) {
		int from = pixelOf(leg.from());
		int to = pixelOf(leg.from() + leg.seconds());
		Path path = new Path(gc.getDevice());
		path.moveTo(from, middle);
		path.lineTo(to, middle);
		LinePen.thick(gc, path, leg.stage());
		path.dispose();
		if (leg.stop()) {
			gc.setBackground(ThemeColour.BENCH_INK.colour());
			gc.fillRectangle(from - STOP_PX / 2, middle - 5, STOP_PX, 11);
		}
	}

	private void paintKnob(GC gc, int x, int middle) {
		gc.setBackground(ThemeColour.BENCH_ACCENT.colour());
		gc.fillPolygon(new int[] { x - KNOB_PX, middle - 11, x + KNOB_PX, middle - 11, x + KNOB_PX, middle + 7, x, middle + 12,
				x - KNOB_PX, middle + 7 });
	}
}
