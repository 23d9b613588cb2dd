package org.frisket.ui.views.internal.fonts;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;
import org.frisket.geometry.Outline;

/** A list of families, each with the words of the wording in its plain font. Only the rows that are seen are painted. */
public final class FontList extends Canvas {

	private static final int SPACE_PX = 6;
	private static final int NAME_SHARE = 3;

	private final FontSamples samples;
	private final Consumer<FontFamily> gone;
	private final Runnable chosen;
	private List<FontFamily> families = List.of();
	private String words = ""; //$NON-NLS-1$
	private int selected = -1;
	private int top;

	/**
	 * @param gone   told of the family that was gone to
	 * @param chosen told when the one that is selected is to be kept
	 */
	public FontList(Composite parent, Consumer<FontFamily> gone, Runnable chosen) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.V_SCROLL | SWT.NO_FOCUS);
		this.gone = gone;
		this.chosen = chosen;
		samples = new FontSamples(getDisplay(), () -> {
			if (!isDisposed()) {
				redraw();
			}
		});
		setBackground(getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
		addListener(SWT.Paint, this::paint);
		addListener(SWT.Resize, event -> scroll());
		addListener(SWT.MouseDown, this::pressed);
		addListener(SWT.MouseDoubleClick, event -> chosen.run());
		addListener(SWT.Dispose, event -> samples.close());
		getVerticalBar().addListener(SWT.Selection, event -> {
			top = getVerticalBar().getSelection();
			redraw();
		});
		install();
	}

	/** Shows these families; the selected one stays selected if it is among them. */
	public void show(List<FontFamily> newFamilies, String newWords) {
		FontFamily before = selection();
		families = newFamilies;
		words = newWords;
		selected = families.indexOf(before);
		scroll();
		reveal();
		redraw();
	}

	/** Selects without telling. */
	public void select(FontFamily family) {
		selected = families.indexOf(family);
		reveal();
		redraw();
	}

	/** The selected family; null if none is. */
	public FontFamily selection() {
		return selected < 0 || selected >= families.size() ? null : families.get(selected);
	}

	public List<FontFamily> families() {
		return families;
	}

	/** Goes down by so many rows, or up, and tells. */
	public void go(int rows) {
		if (!families.isEmpty()) {
			goTo(selected < 0 ? 0 : Math.max(0, Math.min(families.size() - 1, selected + rows)));
		}
	}

	/** How many whole rows are seen. */
	public int page() {
		return Math.max(1, getClientArea().height / rowHeight());
	}

	private void goTo(int index) {
		selected = index;
		reveal();
		redraw();
		getAccessible().setFocus(ACC.CHILDID_SELF);
		gone.accept(selection());
	}

	private int rowHeight() {
		GC gc = new GC(this);
		try {
			return 2 * gc.getFontMetrics().getHeight();
		} finally {
			gc.dispose();
		}
	}

	private void scroll() {
		ScrollBar bar = getVerticalBar();
		int page = page();
		top = Math.max(0, Math.min(top, families.size() - page));
		bar.setValues(top, 0, Math.max(1, families.size()), Math.min(page, Math.max(1, families.size())), 1, page);
		bar.setVisible(families.size() > page);
	}

	private void reveal() {
		if (selected >= 0) {
			top = Math.max(selected - page() + 1, Math.min(top, selected));
			getVerticalBar().setSelection(top);
		}
	}

	private void pressed(Event event) {
		int index = top + event.y / rowHeight();
		if (event.button == 1 && index < families.size()) {
			goTo(index);
		}
	}

	/** Where a row is seen, for what points at it. */
	public Rectangle row(int index) {
		int height = rowHeight();
		return new Rectangle(0, (index - top) * height, getClientArea().width, height);
	}

	private void paint(Event event) {
		GC gc = event.gc;
		int height = rowHeight();
		int last = Math.min(families.size(), top + getClientArea().height / height + 1);
		// the last first: what is asked for last is made first
		for (int i = last - 1; i >= top; i--) {
			paintRow(gc, families.get(i), row(i), i == selected);
		}
	}

	private void paintRow(GC gc, FontFamily family, Rectangle row, boolean isSelected) {
		Color ink = getDisplay()
				.getSystemColor(isSelected ? SWT.COLOR_LIST_SELECTION_TEXT : SWT.COLOR_LIST_FOREGROUND);
		if (isSelected) {
			gc.setBackground(getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION));
			gc.fillRectangle(row);
		}
		gc.setForeground(ink);
		int name = row.width / NAME_SHARE;
		Point size = gc.textExtent(family.name());
		gc.setClipping(row.x, row.y, name, row.height);
		gc.drawText(family.name(), row.x + SPACE_PX, row.y + (row.height - size.y) / 2, true);
		gc.setClipping((Rectangle) null);
		Outline sample = samples.sample(family.plain(), words);
		if (sample != null) {
			SamplePainter.paint(gc, sample, new Rectangle(row.x + name + SPACE_PX, row.y + 2,
					row.width - name - 2 * SPACE_PX, row.height - 4));
		}
	}

	private void install() {
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = selection() == null ? Messages.FontList_name : selection().name();
			}
		});
		getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = ACC.ROLE_LIST;
			}

			@Override
			public void getChildCount(AccessibleControlEvent event) {
				event.detail = families.size();
			}
		});
	}

	@Override
	public boolean setFocus() {
		// keys go to the filter above
		return false;
	}
}
