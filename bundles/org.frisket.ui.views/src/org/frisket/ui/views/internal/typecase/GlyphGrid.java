package org.frisket.ui.views.internal.typecase;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;
import org.frisket.typography.FontFace;
import org.frisket.typography.chart.GlyphChart;
import org.frisket.typography.chart.GlyphEntry;

/** A picture of every glyph that was found; only those that are seen are painted, and the font makes no difference. */
public final class GlyphGrid extends Canvas {

	/** What the keys and the mouse ask for. */
	interface Client {

		/** This one is looked at; null for none. */
		void selected(GlyphEntry entry);

		/** This one is to be put on the bench. */
		void chosen(GlyphEntry entry);

		/** A letter was typed here, which is meant for the search. */
		void typed(char character);
	}

	static final int LEAST_CELL = 28;
	static final int MOST_CELL = 128;
	static final int USUAL_CELL = 48;

	private final Client client;
	private final GlyphPictures pictures;
	private final GridPainter painter;
	private GlyphChart chart;
	private List<GlyphEntry> entries = List.of();
	private String note = ""; //$NON-NLS-1$
	private int cell = USUAL_CELL;
	private int selected = -1;
	private int scrolled;
	private int hovered = -1;

	GlyphGrid(Composite parent, Client client) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.V_SCROLL | SWT.NO_BACKGROUND);
		this.client = client;
		pictures = new GlyphPictures(getDisplay(), () -> {
			if (!isDisposed()) {
				redraw();
			}
		});
		painter = new GridPainter(this, pictures);
		setBackground(getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
		addListener(SWT.Paint, event -> painter.paint(event.gc));
		addListener(SWT.Resize, event -> refresh());
		addListener(SWT.MouseDown, this::pressed);
		addListener(SWT.MouseDoubleClick, this::doubleClicked);
		addListener(SWT.MouseMove, this::moved);
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		addListener(SWT.Dispose, event -> pictures.close());
		getVerticalBar().addListener(SWT.Selection, event -> {
			scrolled = getVerticalBar().getSelection();
			redraw();
		});
		new GridKeys(this);
		describe();
	}

	/** Shows these glyphs; the one that is selected stays so if it is among them. */
	void show(GlyphChart newChart, List<GlyphEntry> newEntries, String noteIfNone) {
		GlyphEntry before = newChart == chart ? selection().orElse(null) : null;
		chart = newChart;
		entries = newEntries;
		note = noteIfNone;
		selected = before == null ? -1 : entries.indexOf(before);
		hovered = -1;
		scrolled = selected < 0 ? 0 : geometry().revealing(selected, scrolled);
		setToolTipText(null);
		refresh();
		client.selected(selection().orElse(null));
	}

	/** What is said in place of cells. */
	public String note() {
		return entries.isEmpty() ? note : ""; //$NON-NLS-1$
	}

	GlyphChart chart() {
		return chart;
	}

	/** The font whose glyphs are shown. */
	public Optional<FontFace> shownFace() {
		return Optional.ofNullable(chart).map(GlyphChart::face);
	}

	/** The glyphs that can be scrolled through. */
	public List<GlyphEntry> entries() {
		return entries;
	}

	public Optional<GlyphEntry> selection() {
		return selected < 0 || selected >= entries.size() ? Optional.empty() : Optional.of(entries.get(selected));
	}

	int selectedIndex() {
		return selected;
	}

	/** How wide a cell is at least, in pixels; what is at the top stays there. */
	void setCell(int pixels) {
		int first = geometry().firstSeen(scrolled);
		cell = Math.max(LEAST_CELL, Math.min(MOST_CELL, pixels));
		GridGeometry now = geometry();
		scrolled = Math.min(now.furthest(), first / now.columns() * now.rowHeight());
		refresh();
	}

	int cell() {
		return cell;
	}

	GridGeometry geometry() {
		Rectangle area = getClientArea();
		return new GridGeometry(area.width, area.height, cell, painter.labelHeight(cell), entries.size());
	}

	int scrolled() {
		return scrolled;
	}

	/** Where a cell is seen, for what points at it. */
	public Rectangle bounds(int index) {
		return geometry().bounds(index, scrolled);
	}

	/** The cell at a place of the control; empty for none. */
	Optional<GlyphEntry> at(int x, int y) {
		int index = geometry().at(x, y, scrolled);
		return index < 0 ? Optional.empty() : Optional.of(entries.get(index));
	}

	/** Selects a glyph and brings it into view. */
	public void go(int index) {
		if (!entries.isEmpty()) {
			selected = Math.max(0, Math.min(entries.size() - 1, index));
			scrolled = geometry().revealing(selected, scrolled);
			refresh();
			getAccessible().setFocus(selected);
			client.selected(entries.get(selected));
		}
	}

	/** Puts the selected glyph on the bench. */
	void choose() {
		selection().ifPresent(client::chosen);
	}

	Client client() {
		return client;
	}

	/** How many cells had their picture the last time they were painted. */
	public int painted() {
		return painter.painted();
	}

	/** What the pictures cost so far. */
	public GlyphPictures pictures() {
		return pictures;
	}

	private void refresh() {
		GridGeometry geometry = geometry();
		scrolled = Math.max(0, Math.min(scrolled, geometry.furthest()));
		ScrollBar bar = getVerticalBar();
		bar.setVisible(geometry.furthest() > 0);
		bar.setValues(scrolled, 0, Math.max(1, geometry.contentHeight()),
				Math.max(1, Math.min(geometry.height(), geometry.contentHeight())), geometry.rowHeight(),
				geometry.rowsOnPage() * geometry.rowHeight());
		redraw();
	}

	private void pressed(Event event) {
		setFocus();
		int index = geometry().at(event.x, event.y, scrolled);
		if (index >= 0) {
			go(index);
		}
	}

	private void doubleClicked(Event event) {
		if (event.button == 1 && at(event.x, event.y).isPresent()) {
			choose();
		}
	}

	private void moved(Event event) {
		int index = geometry().at(event.x, event.y, scrolled);
		if (index != hovered) {
			hovered = index;
			setToolTipText(index < 0 ? null : GlyphWords.of(entries.get(index)).replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	private void describe() {
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = event.childID >= 0 && event.childID < entries.size()
						? GlyphWords.of(entries.get(event.childID))
						: selection().map(GlyphWords::of).orElse(Messages.GlyphGrid_name);
			}
		});
		getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_LIST : ACC.ROLE_LISTITEM;
			}

			@Override
			public void getChildCount(AccessibleControlEvent event) {
				event.detail = entries.size();
			}
		});
	}
}
