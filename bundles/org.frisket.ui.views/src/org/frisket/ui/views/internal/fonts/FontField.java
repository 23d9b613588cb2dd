package org.frisket.ui.views.internal.fonts;

import java.util.Objects;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.frisket.geometry.Outline;
import org.frisket.typography.source.FontEntry;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.views.internal.Shortened;

/** Shows the name of a family set in itself; a click, Enter, the space bar or the down key opens the list. */
public final class FontField extends Canvas {

	private static final int SPACE_PX = 6;
	private static final int ARROW_PX = 4;
	private static final int WIDTH_PX = 60;

	private final FontSamples samples;
	private final String label;
	private final Runnable opened;
	private String name = ""; //$NON-NLS-1$
	private FontEntry font;
	private boolean missing;

	/** @param label what the field is called */
	public FontField(Composite parent, String label, Runnable opened) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
		this.label = label;
		this.opened = opened;
		samples = new FontSamples(getDisplay(), () -> {
			if (!isDisposed()) {
				redraw();
			}
		});
		setBackground(getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
		addListener(SWT.Paint, this::paint);
		addListener(SWT.MouseDown, event -> {
			setFocus();
			opened.run();
		});
		addListener(SWT.KeyDown, this::key);
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		addListener(SWT.Dispose, event -> samples.close());
		addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_RETURN);
		install();
	}

	/**
	 * @param family its name as the job has it; empty for none, or for several
	 * @param plain  what it is set in here; null if it is not at hand
	 * @param gone   whether the job misses the font
	 */
	public void show(String family, FontEntry plain, boolean gone) {
		if (name.equals(family) && Objects.equals(font, plain) && missing == gone) {
			return;
		}
		name = family;
		font = plain;
		missing = gone;
		setToolTipText(missing ? text() : label);
		redraw();
	}

	/** What is shown, in words. */
	public String text() {
		return missing && !name.isEmpty() ? NLS.bind(Messages.FontField_missing, name) : name;
	}

	public boolean isMissing() {
		return missing;
	}

	private void key(Event event) {
		if (event.keyCode == SWT.ARROW_DOWN || event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR
				|| event.keyCode == SWT.SPACE || event.keyCode == SWT.F4) {
			opened.run();
		}
	}

	private void paint(Event event) {
		GC gc = event.gc;
		Rectangle area = getClientArea();
		gc.setForeground(missing ? ThemeColour.FINDING_MESSAGE.colour()
				: getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND));
		int end = area.width - 4 * ARROW_PX;
		Outline sample = missing || font == null || name.isEmpty() ? null : samples.sample(font, name);
		if (sample != null && !sample.isEmpty()) {
			SamplePainter.paintWhole(gc, sample, new Rectangle(SPACE_PX, 2, end - 2 * SPACE_PX, area.height - 4));
		} else {
			Point size = gc.textExtent(text());
			gc.drawText(Shortened.of(gc, text(), end - 2 * SPACE_PX), SPACE_PX, (area.height - size.y) / 2, true);
		}
		gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND));
		gc.setBackground(gc.getForeground());
		int middle = area.height / 2;
		gc.fillPolygon(new int[] { end, middle - ARROW_PX / 2, end + 2 * ARROW_PX, middle - ARROW_PX / 2,
				end + ARROW_PX, middle + ARROW_PX / 2 + 1 });
		if (isFocusControl()) {
			gc.setForeground(ThemeColour.BENCH_ACCENT.colour());
			gc.drawRectangle(0, 0, area.width - 1, area.height - 1);
		}
	}

	private void install() {
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = label;
			}
		});
		getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = ACC.ROLE_COMBOBOX;
			}

			@Override
			public void getValue(AccessibleControlEvent event) {
				event.result = text();
			}
		});
	}

	@Override
	public Point computeSize(int widthHint, int heightHint, boolean changed) {
		GC gc = new GC(this);
		int height = gc.getFontMetrics().getHeight() * 2;
		gc.dispose();
		Rectangle trim = computeTrim(0, 0, widthHint == SWT.DEFAULT ? WIDTH_PX : widthHint,
				heightHint == SWT.DEFAULT ? height : heightHint);
		return new Point(widthHint == SWT.DEFAULT ? trim.width : widthHint, trim.height);
	}
}
