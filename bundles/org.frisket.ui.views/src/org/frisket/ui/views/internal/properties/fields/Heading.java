package org.frisket.ui.views.internal.properties.fields;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/** The heading of a section: a click or the space bar folds what is below it away, or out again. */
public final class Heading extends Canvas {

	private static final int MARK_PX = 8;
	private static final int SPACE_PX = 4;

	private final String title;
	private final Runnable toggled;
	private boolean folded;

	public Heading(Composite parent, String title, Runnable toggled) {
		super(parent, SWT.DOUBLE_BUFFERED);
		this.title = title;
		this.toggled = toggled;
		setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		setCursor(getDisplay().getSystemCursor(SWT.CURSOR_HAND));
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.MouseDown, event -> {
			if (event.button == 1) {
				setFocus();
				toggled.run();
			}
		});
		addListener(SWT.KeyDown, this::keyDown);
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		// a canvas that listens to keys would keep Tab and the arrows for itself
		addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
				|| event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = title;
			}
		});
		getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = ACC.ROLE_TREEITEM;
			}

			@Override
			public void getState(AccessibleControlEvent event) {
				event.detail = ACC.STATE_FOCUSABLE | (folded ? ACC.STATE_COLLAPSED : ACC.STATE_EXPANDED)
						| (isFocusControl() ? ACC.STATE_FOCUSED : 0);
			}
		});
	}

	private void keyDown(Event event) {
		boolean turns = event.keyCode == SWT.SPACE || event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR
				|| event.keyCode == (folded ? SWT.ARROW_RIGHT : SWT.ARROW_LEFT);
		if (turns) {
			toggled.run();
		}
	}

	public void setFolded(boolean isFolded) {
		folded = isFolded;
		setToolTipText(folded ? Messages.Heading_unfold : Messages.Heading_fold);
		redraw();
	}

	public boolean isFolded() {
		return folded;
	}

	public String title() {
		return title;
	}

	private void paint(GC gc) {
		Point size = getSize();
		int middle = size.y / 2;
		gc.setAntialias(SWT.ON);
		gc.setBackground(getForeground());
		int half = MARK_PX / 2;
		gc.fillPolygon(folded ? new int[] { 1, middle - half, 1 + half + 1, middle, 1, middle + half }
				: new int[] { 0, middle - half / 2, MARK_PX, middle - half / 2, half, middle + half / 2 + 1 });
		gc.drawText(title, MARK_PX + SPACE_PX, (size.y - gc.textExtent(title).y) / 2, true);
		if (isFocusControl()) {
			gc.drawFocus(MARK_PX + SPACE_PX / 2, 0, gc.textExtent(title).x + SPACE_PX, size.y);
		}
	}

	@Override
	public Point computeSize(int width, int height, boolean changed) {
		GC gc = new GC(this);
		Point text = gc.textExtent(title);
		gc.dispose();
		return new Point(width == SWT.DEFAULT ? text.x + MARK_PX + 2 * SPACE_PX : width, text.y + SPACE_PX);
	}
}
