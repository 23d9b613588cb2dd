package org.frisket.ui.orders.internal.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.config.AbstractRegistryConfiguration;
import org.eclipse.nebula.widgets.nattable.config.CellConfigAttributes;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.coordinate.Range;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.grid.data.DummyColumnHeaderDataProvider;
import org.eclipse.nebula.widgets.nattable.grid.layer.ColumnHeaderLayer;
import org.eclipse.nebula.widgets.nattable.layer.CompositeLayer;
import org.eclipse.nebula.widgets.nattable.layer.DataLayer;
import org.eclipse.nebula.widgets.nattable.layer.ILayer;
import org.eclipse.nebula.widgets.nattable.layer.NoScalingDpiConverter;
import org.eclipse.nebula.widgets.nattable.layer.command.ConfigureScalingCommand;
import org.eclipse.nebula.widgets.nattable.layer.event.RowStructuralRefreshEvent;
import org.eclipse.nebula.widgets.nattable.painter.layer.CellLayerPainter;
import org.eclipse.nebula.widgets.nattable.painter.layer.NatLayerPainter;
import org.eclipse.nebula.widgets.nattable.selection.RowSelectionModel;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.eclipse.nebula.widgets.nattable.selection.command.SelectRowsCommand;
import org.eclipse.nebula.widgets.nattable.selection.config.RowOnlySelectionBindings;
import org.eclipse.nebula.widgets.nattable.selection.config.RowOnlySelectionConfiguration;
import org.eclipse.nebula.widgets.nattable.selection.event.ISelectionEvent;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.nebula.widgets.nattable.viewport.ViewportLayer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.frisket.orders.Entry;
import org.frisket.orders.desk.BookColumn;
import org.frisket.orders.desk.BookGroup;
import org.frisket.orders.desk.BookLine;
import org.frisket.orders.desk.BookLines;
import org.frisket.ui.orders.internal.ListAccess;

/** The table of the order book: as many lines as there are, of which only those in view are painted. */
public final class BookGrid {

	/** Whoever is told what is done at the table. */
	interface Client {

		void chosen(Entry job);

		void sorted(BookColumn column);

		/** Somebody types while the table has the focus. */
		void typed(char character);

		/** @param fold whether a group is to be folded, and not unfolded */
		void folded(BookGroup group, boolean fold);

		void selected();
	}

	private final Client client;
	private final NatTable table;
	private final DataLayer data;
	private final SelectionLayer selection;
	private final RowSelectionModel<BookLine> selected;
	private final ViewportLayer viewport;
	private final Thumbnails thumbnails;
	private final TitleWidth titleWidth;
	private BookLines lines;
	private BookText text;

	BookGrid(Composite parent, BookLines lines, BookText text, Client client) {
		this.lines = lines;
		this.text = text;
		this.client = client;
		TableStart.prepare();
		BookRows rows = new BookRows(this);
		data = new DataLayer(rows);
		selection = new SelectionLayer(data, false);
		selection.addConfiguration(new RowOnlySelectionConfiguration());
		selection.addConfiguration(new RowOnlySelectionBindings());
		selected = new RowSelectionModel<>(selection, rows, line -> line);
		selection.setSelectionModel(selected);
		selection.setLayerPainter(new CellLayerPainter());
		viewport = new ViewportLayer(selection);
		viewport.setRegionName(GridRegion.BODY);
		DataLayer titles = new DataLayer(new DummyColumnHeaderDataProvider(rows));
		ColumnHeaderLayer header = new ColumnHeaderLayer(titles, viewport, selection);
		header.setLayerPainter(new CellLayerPainter());
		CompositeLayer all = new CompositeLayer(1, 2);
		all.setChildLayer(GridRegion.COLUMN_HEADER, header, 0, 0);
		all.setChildLayer(GridRegion.BODY, viewport, 0, 1);
		table = new NatTable(parent, SWT.NO_BACKGROUND | SWT.NO_REDRAW_RESIZE | SWT.DOUBLE_BUFFERED | SWT.V_SCROLL
				| SWT.H_SCROLL, all, false);
		// SWT itself scales with the screen
		table.doCommand(new ConfigureScalingCommand(new NoScalingDpiConverter(), new NoScalingDpiConverter()));
		thumbnails = new Thumbnails(table.getDisplay(), table::redraw);
		size(titles);
		titleWidth = new TitleWidth(table, data);
		titleWidth.install();
		paint();
		new BookKeys(this).install();
		ListAccess access = ListAccess.install(table, new BookAccess(this));
		table.configure();
		table.addLayerListener(event -> {
			if (event instanceof ISelectionEvent) {
				client.selected();
				access.moved();
			}
		});
		table.addListener(SWT.FocusIn, event -> table.redraw());
		table.addListener(SWT.FocusOut, event -> table.redraw());
		table.addListener(SWT.Dispose, event -> thumbnails.dispose());
	}

	private void size(DataLayer titles) {
		GC gc = new GC(table);
		int line = gc.getFontMetrics().getHeight();
		gc.dispose();
		data.setDefaultRowHeight(Math.max(line, Thumbnails.HEIGHT_PX) + BookPainter.SPACE_PX);
		titles.setDefaultRowHeight(line + 3 * BookPainter.SPACE_PX);
		for (GridColumn column : GridColumn.values()) {
			data.setColumnWidthByPosition(column.ordinal(), column.width());
		}
	}

	private void paint() {
		BookPainter cells = new BookPainter(this, table);
		HeaderPainter header = new HeaderPainter(this);
		table.setLayerPainter(new NatLayerPainter(table) {
			@Override
			protected void paintBackground(ILayer layer, GC gc, int x, int y,
					Rectangle area, IConfigRegistry registry) {
				gc.setBackground(Display.getCurrent().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
				gc.fillRectangle(area);
			}
		});
		table.addConfiguration(new AbstractRegistryConfiguration() {
			@Override
			public void configureRegistry(IConfigRegistry registry) {
				registry.registerConfigAttribute(CellConfigAttributes.CELL_PAINTER, cells, DisplayMode.NORMAL);
				registry.registerConfigAttribute(CellConfigAttributes.CELL_PAINTER, header, DisplayMode.NORMAL,
						GridRegion.COLUMN_HEADER);
			}
		});
	}

	/** The control itself. */
	public NatTable table() {
		return table;
	}

	/** What can be scrolled through. */
	public BookLines lines() {
		return lines;
	}

	BookText text() {
		return text;
	}

	Client client() {
		return client;
	}

	LocalDate today() {
		return lines.sight().today();
	}

	Optional<Image> picture(Entry job) {
		return thumbnails.of(job);
	}

	/** Whether what a line shows of its job is there, be it a picture or that there is nothing to see. */
	public boolean isPictured(int row) {
		return lines.job(row).filter(thumbnails::has).isPresent();
	}

	int rowHeight() {
		return data.getDefaultRowHeight();
	}

	/** Where a column begins, from where the first does. */
	int startOf(int column) {
		return data.getStartXOfColumnPosition(column);
	}

	/** Where the title of the column begins that the book is sorted by, in pixels of the table. */
	public int startOf(BookColumn column) {
		for (GridColumn each : GridColumn.values()) {
			if (each.sorts().filter(column::equals).isPresent()) {
				return table.getStartXOfColumnPosition(each.ordinal());
			}
		}
		throw new IllegalArgumentException(column.name());
	}

	/** The width that a column was given, in pixels. */
	int widthOf(GridColumn column) {
		return column == GridColumn.TITLE ? titleWidth.least() : data.getColumnWidthByPosition(column.ordinal());
	}

	void setWidth(GridColumn column, int width) {
		data.setColumnWidthByPosition(column.ordinal(), width);
	}

	/** Shows other lines; who was selected stays so if still seen, and so does what is at the top. */
	void show(BookLines now, BookText words) {
		Optional<BookLine> cursor = cursor();
		lines = now;
		text = words;
		List<BookLine> gone = selected.getSelectedRowObjects().stream().filter(line -> now.indexOf(line) < 0).toList();
		gone.forEach(selected::clearSelection);
		data.fireLayerEvent(new RowStructuralRefreshEvent(data));
		cursor.map(now::indexOf).filter(row -> row >= 0).ifPresent(row -> selection.moveSelectionAnchor(0, row));
		table.redraw();
	}

	/** The line that the keys start from. */
	Optional<BookLine> cursor() {
		int row = selection.getSelectionAnchor().getRowPosition();
		return row < 0 || row >= lines.size() ? Optional.empty() : Optional.of(lines.line(row));
	}

	int cursorRow() {
		int row = selection.getSelectionAnchor().getRowPosition();
		return row >= lines.size() ? -1 : row;
	}

	/** Selects a line, or all from the cursor to it, and has it seen. */
	void go(int row, boolean extend) {
		if (row >= 0 && row < lines.size()) {
			table.doCommand(new SelectRowsCommand(selection, 0, row, extend, false));
			viewport.moveRowPositionIntoViewport(row);
		}
	}

	/** Selects the job of this number, if it is seen. */
	public void select(long number) {
		for (int row = 0; row < lines.size(); row++) {
			if (lines.job(row).map(Entry::number).orElse(0L) == number) {
				go(row, false);
				return;
			}
		}
	}

	/** The selected jobs, each once, in the order in which they are seen. */
	public List<Entry> selection() {
		Set<Entry> jobs = new LinkedHashSet<>();
		for (Range range : selection.getSelectedRowPositions().stream()
				.sorted((a, b) -> Integer.compare(a.start, b.start)).toList()) {
			for (int row = range.start; row < Math.min(range.end, lines.size()); row++) {
				lines.job(row).ifPresent(jobs::add);
			}
		}
		return new ArrayList<>(jobs);
	}

	boolean hasSelection() {
		return !selected.isEmpty();
	}

	/** The line of a group's heading. */
	int headingOf(BookGroup group) {
		return lines.indexOf(new BookLine(group.value(), 0));
	}

	/** Where a line is seen, in pixels of the table; empty if it is not in view. */
	public Optional<Rectangle> boundsOf(int row) {
		int position = viewport.underlyingToLocalRowPosition(selection, row);
		if (position < 0 || position >= viewport.getRowCount()) {
			return Optional.empty();
		}
		int top = table.getStartYOfRowPosition(position + 1);
		int height = table.getRowHeightByPosition(position + 1);
		return Optional.of(new Rectangle(0, top, table.getClientArea().width, height));
	}

	/** The line at a height; -1 where there is none. */
	int rowAt(int y) {
		int position = table.getRowPositionByY(y);
		return position < 1 ? -1 : table.getRowIndexByPosition(position);
	}

	/** The first line in view. */
	public int top() {
		return viewport.getRowIndexByPosition(0);
	}

	boolean isSelected(int row) {
		return selection.isRowPositionSelected(row);
	}
}
