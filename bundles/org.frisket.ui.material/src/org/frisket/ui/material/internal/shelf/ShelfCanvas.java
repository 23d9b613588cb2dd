package org.frisket.ui.material.internal.shelf;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;
import org.frisket.material.Stock;
import org.frisket.ui.LengthUnit;

/** A list of stock as it lies on a shelf; only the rows that are seen are painted. */
public final class ShelfCanvas extends Canvas {

	/** What keys and pointer ask for. */
	interface Client {

		/** Another one is looked at; null for none. */
		default void selected(Stock stock) {
		}

		/** Enter, or a double click. */
		void chosen(Stock stock);

		/** Delete. */
		default void removed(Stock stock) {
		}

		/** So many more, or fewer below 0. */
		default void counted(Stock stock, int more) {
		}

		/** Something was typed here that is meant for the filter; 0 to empty it. */
		default void typed(char character) {
		}
	}

	private final Client client;
	private final Function<Stock, String> remark;
	private final int rowHeight;
	private List<Stock> stocks = List.of();
	private int selected = -1;
	private int painted;

	/** @param remark what is said of a stock in place of the number on hand; null for that */
	ShelfCanvas(Composite parent, Client client, Function<Stock, String> remark) {
		super(parent, SWT.V_SCROLL | SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
		this.client = client;
		this.remark = remark;
		GC gc = new GC(this);
		rowHeight = ShelfPainter.rowHeight(gc.getFontMetrics().getHeight());
		gc.dispose();
		setBackground(getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
		addListener(SWT.Paint, event -> paint(event.gc, event.y, event.y + event.height));
		addListener(SWT.Resize, event -> updateScroll());
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		addListener(SWT.MouseDown, this::pressed);
		addListener(SWT.MouseDoubleClick, this::doubleClicked);
		addListener(SWT.MouseMove, this::moved);
		getVerticalBar().addListener(SWT.Selection, event -> redraw());
		Runnable unwatched = LengthUnit.whenChanged(() -> getDisplay().asyncExec(() -> {
			if (!isDisposed()) {
				redraw();
			}
		}));
		addListener(SWT.Dispose, event -> unwatched.run());
		new ShelfKeys(this);
		ShelfAccess.install(this);
	}

	/** Shows these; the selected one stays so if it is among them. */
	void show(List<Stock> newStocks) {
		String id = selection().map(Stock::id).orElse(null);
		int before = selected;
		stocks = List.copyOf(newStocks);
		selected = indexOf(id);
		if (selected < 0) {
			selected = stocks.isEmpty() ? -1 : Math.max(0, Math.min(before, stocks.size() - 1));
		}
		updateScroll();
		reveal();
		redraw();
		client.selected(selection().orElse(null));
	}

	private int indexOf(String id) {
		for (int i = 0; i < stocks.size(); i++) {
			if (stocks.get(i).id().equals(id)) {
				return i;
			}
		}
		return -1;
	}

	/** What can be scrolled through. */
	public List<Stock> stocks() {
		return stocks;
	}

	public Optional<Stock> selection() {
		return selected < 0 || selected >= stocks.size() ? Optional.empty() : Optional.of(stocks.get(selected));
	}

	int selectedIndex() {
		return selected;
	}

	Client client() {
		return client;
	}

	/** Selects the stock with this id, if it is shown. */
	public void select(String id) {
		int index = indexOf(id);
		if (index >= 0) {
			go(index);
		}
	}

	void go(int index) {
		if (!stocks.isEmpty()) {
			selected = Math.max(0, Math.min(stocks.size() - 1, index));
			reveal();
			redraw();
			getAccessible().setFocus(selected);
			client.selected(stocks.get(selected));
		}
	}

	int rowsOnPage() {
		return Math.max(1, getClientArea().height / rowHeight);
	}

	/** Where a row is seen. */
	public Rectangle boundsOf(int index) {
		return new Rectangle(0, index * rowHeight - scrolled(), getClientArea().width, rowHeight);
	}

	/** Where the sheet of a row is seen from above; its edge is just below. */
	public Rectangle faceOf(int index) {
		return ShelfPainter.faceOf(boundsOf(index));
	}

	/** The stock at a height; empty where there is none. */
	Optional<Stock> at(int y) {
		int index = (y + scrolled()) / rowHeight;
		return y < 0 || index >= stocks.size() ? Optional.empty() : Optional.of(stocks.get(index));
	}

	/** How many rows were painted the last time that anything was. */
	public int painted() {
		return painted;
	}

	private int scrolled() {
		return getVerticalBar().getSelection();
	}

	private void updateScroll() {
		ScrollBar bar = getVerticalBar();
		int room = getClientArea().height;
		int height = stocks.size() * rowHeight;
		bar.setVisible(height > room);
		bar.setValues(Math.max(0, Math.min(bar.getSelection(), height - room)), 0, Math.max(height, 1),
				Math.max(1, Math.min(room, height)), rowHeight, Math.max(1, room - rowHeight));
	}

	private void reveal() {
		Rectangle place = boundsOf(selected);
		int room = getClientArea().height;
		if (selected < 0 || room == 0) {
			return;
		}
		if (place.y < 0) {
			getVerticalBar().setSelection(scrolled() + place.y);
		} else if (place.y + place.height > room) {
			getVerticalBar().setSelection(scrolled() + place.y + place.height - room);
		}
	}

	private void paint(GC gc, int from, int to) {
		Rectangle area = getClientArea();
		gc.setBackground(getBackground());
		gc.fillRectangle(area);
		ShelfPainter painter = new ShelfPainter(gc);
		painted = 0;
		for (int i = (scrolled() + from) / rowHeight; i < stocks.size(); i++) {
			Rectangle place = boundsOf(i);
			if (place.y > to) {
				break;
			}
			Stock stock = stocks.get(i);
			painter.paint(place, stock, remark.apply(stock), i == selected, isFocusControl());
			painted++;
		}
	}

	private void pressed(Event event) {
		setFocus();
		at(event.y).ifPresent(stock -> go(stocks.indexOf(stock)));
	}

	/** All of a row is told where there is no room to write it. */
	private void moved(Event event) {
		String words = at(event.y).map(StockText::spoken).map(text -> text.replace("&", "&&")).orElse(null); //$NON-NLS-1$ //$NON-NLS-2$
		if (!Objects.equals(words, getToolTipText())) {
			setToolTipText(words);
		}
	}

	private void doubleClicked(Event event) {
		if (event.button == 1) {
			at(event.y).ifPresent(client::chosen);
		}
	}
}
