package org.frisket.ui.views.internal.fonts;

import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
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
import org.frisket.prepare.fonts.FontVerdict;
import org.frisket.ui.views.internal.Shortened;

/**
 * A list of families, each with the words of the wording in its plain font, and with what is to be said of that font if
 * somebody knows. Only the rows that are seen are painted.
 */
public final class FontList extends Canvas {

	private static final int SPACE_PX = 6;
	private static final int NAME_SHARE = 3;
	/** With verdicts, of the width: a quarter for names, nearly half for verdicts. */
	private static final int NARROW_NAME_SHARE = 4;
	private static final double VERDICT_SHARE = 0.45;

	private final FontSamples samples;
	private final Consumer<FontFamily> gone;
	private final FontVerdicts verdicts;
	private List<FontFamily> families = List.of();
	private String words = ""; //$NON-NLS-1$
	private int selected = -1;
	private int top;

	/**
	 * @param gone   told of the family that was gone to
	 * @param chosen told when the one that is selected is to be kept
	 */
	public FontList(Composite parent, Consumer<FontFamily> gone, Runnable chosen) {
		this(parent, gone, chosen, null);
	}

	/** @param verdicts what is to be said of the fonts; null for nothing */
	FontList(Composite parent, Consumer<FontFamily> gone, Runnable chosen, FontVerdicts verdicts) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.V_SCROLL | SWT.NO_FOCUS);
		this.gone = gone;
		this.verdicts = verdicts;
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
		if (verdicts != null) {
			addListener(SWT.MouseMove, this::tell);
		}
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
			int line = gc.getFontMetrics().getHeight();
			return verdicts == null ? 2 * line : VerdictPainter.LINES * line + SPACE_PX;
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

	/** The small print of the font under the pointer. */
	private void tell(Event event) {
		int index = top + event.y / rowHeight();
		FontVerdict verdict = index < families.size() ? verdicts.known(families.get(index)) : null;
		String words = verdict == null || verdict.small().isEmpty() ? null : verdict.small();
		if (!Objects.equals(words, getToolTipText())) {
			setToolTipText(words);
		}
	}

	/** Where a row is seen, for what points at it. */
	public Rectangle row(int index) {
		int height = rowHeight();
		return new Rectangle(0, (index - top) * height, getClientArea().width, height);
	}

	/** Where a row shows its sample. */
	public Rectangle sample(int index) {
		return sample(row(index));
	}

	private Rectangle sample(Rectangle row) {
		int name = nameWidth(row);
		int end = verdicts == null ? row.width : row.width - verdictWidth(row);
		return new Rectangle(row.x + name + SPACE_PX, row.y + 2, end - name - 2 * SPACE_PX, row.height - 4);
	}

	private int nameWidth(Rectangle row) {
		return row.width / (verdicts == null ? NAME_SHARE : NARROW_NAME_SHARE);
	}

	private static int verdictWidth(Rectangle row) {
		return (int) (VERDICT_SHARE * row.width);
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
		int name = nameWidth(row);
		Point size = gc.textExtent(family.name());
		gc.setClipping(row.x, row.y, name, row.height);
		String shown = verdicts == null ? family.name() : Shortened.of(gc, family.name(), name - SPACE_PX);
		gc.drawText(shown, row.x + SPACE_PX, row.y + (row.height - size.y) / 2, true);
		gc.setClipping((Rectangle) null);
		Outline sample = samples.sample(family.plain(), words);
		if (sample != null) {
			SamplePainter.paint(gc, sample, sample(row));
		}
		if (verdicts != null) {
			int width = verdictWidth(row);
			VerdictPainter.paint(gc, verdicts.of(family),
					new Rectangle(row.x + row.width - width, row.y, width - SPACE_PX, row.height), isSelected);
		}
	}

	private void install() {
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = selection() == null ? Messages.FontList_name : spoken(selection());
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

	private String spoken(FontFamily family) {
		FontVerdict verdict = verdicts == null ? null : verdicts.known(family);
		return verdict == null ? family.name()
				: NLS.bind(Messages.FontList_spoken, new Object[] { family.name(), verdict.word(), verdict.facts() });
	}

	@Override
	public boolean setFocus() {
		// keys go to the filter above
		return false;
	}
}
