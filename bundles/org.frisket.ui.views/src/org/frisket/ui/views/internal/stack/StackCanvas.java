package org.frisket.ui.views.internal.stack;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ScrollBar;
import org.eclipse.ui.IWorkbenchPartSite;
import org.frisket.editing.Edit;
import org.frisket.model.Element;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.ui.bench.FilesDrop;
import org.frisket.ui.bench.JobOnBench;

/** The control that draws the stack: where each row is seen, and which one the keys act on. */
public final class StackCanvas extends Canvas {

	private final LocalResourceManager images = new LocalResourceManager(JFaceResources.getResources(), this);
	private final int lineHeight;
	private final StackStocks stocks = new StackStocks(this);
	private final StackActions actions = new StackActions(this);
	private final StackMouse mouse;
	private final RowName name;
	private JobOnBench bench;
	private StackRows rows;
	private MatThreads threads;
	private GroupBrackets brackets;
	private Row current;
	/** What there was to paint when the job was looked at last; null before the first time. */
	private StackSight sight;

	StackCanvas(Composite parent, IWorkbenchPartSite site) {
		super(parent, SWT.V_SCROLL | SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
		name = new RowName(this, site);
		GC gc = new GC(this);
		lineHeight = gc.getFontMetrics().getHeight();
		gc.dispose();
		lay();
		setBackground(getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
		addListener(SWT.Paint, event -> paint(event.gc, event.y, event.y + event.height));
		addListener(SWT.Resize, event -> {
			updateScroll();
			name.place();
		});
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		getVerticalBar().addListener(SWT.Selection, event -> {
			name.place();
			redraw();
		});
		mouse = new StackMouse(this);
		new StackKeys(this);
		setMenu(new StackMenu(this).menu());
		StackAccess.install(this);
		FilesDrop.onto(this, this::bench);
		StackDrop.onto(this);
	}

	/** Shows the layers of a job; null for none. */
	void show(JobOnBench newBench) {
		mouse.cancel();
		bench = newBench;
		if (bench != null) {
			stocks.watch();
		}
		refresh();
	}

	JobOnBench bench() {
		return bench;
	}

	/** Takes up what has changed in the job. */
	void refresh() {
		name.close();
		refreshPicture();
	}

	/** Takes up what has been found out about the job. */
	void refreshPicture() {
		lay();
		if (!rows.list().contains(current)) {
			current = current != null && current.element() != null && current.element().eContainer() != null
					&& rows.indexOf(Row.of(current.element())) >= 0 ? Row.of(current.element())
							: rows.list().stream().filter(Row::isLayer).findFirst().orElse(null);
		}
		updateScroll();
		name.place();
		redrawChanges();
	}

	/** While words are typed most rows stay as they are. */
	private void redrawChanges() {
		StackSight before = sight;
		sight = StackSight.of(rows, threads, brackets, current);
		if (!sight.hasSameFrame(before)) {
			redraw();
			return;
		}
		for (int row : sight.rowsUnlike(before)) {
			Rectangle place = boundsOf(row);
			redraw(place.x, place.y, place.width, place.height, false);
		}
	}

	private void lay() {
		rows = new StackRows(bench, lineHeight, stocks::of);
		threads = new MatThreads(bench == null ? null : bench.job(), rows);
		brackets = new GroupBrackets(bench == null ? null : bench.job(), rows);
	}

	private void updateScroll() {
		ScrollBar bar = getVerticalBar();
		int room = getClientArea().height;
		int height = rows.height();
		bar.setVisible(height > room);
		bar.setValues(Math.min(bar.getSelection(), Math.max(0, height - room)), 0, Math.max(height, 1),
				Math.max(1, Math.min(room, height)), lineHeight, Math.max(1, room - lineHeight));
	}

	/** What stands over the sheet of a layer. */
	public String title(Layer layer) {
		return StackPainter.titleOf(layer, rows.state(new Row(layer, null)));
	}

	/** Where a row is seen, in pixels of the control. */
	public Rectangle boundsOf(Row row) {
		int index = rows.indexOf(row);
		return index < 0 ? new Rectangle(0, 0, 0, 0) : boundsOf(index);
	}

	private Rectangle boundsOf(int index) {
		return new Rectangle(0, rows.topOf(index) - scrolled(), getClientArea().width, rows.heightOf(index));
	}

	/** Where the row of a layer is seen. */
	public Rectangle boundsOf(Layer layer) {
		return boundsOf(new Row(layer, null));
	}

	/** Where the row of an element is seen. */
	public Rectangle boundsOf(Element element) {
		return element.eContainer() == null ? new Rectangle(0, 0, 0, 0) : boundsOf(Row.of(element));
	}

	/** Where the bead of a mat's thread is seen; null if the mat follows nothing that has a row. */
	public Rectangle beadOf(Mat mat) {
		return threads.beadOf(mat, getClientArea().width, scrolled());
	}

	/** The mat whose thread runs through a place of the control; null if none does. */
	Mat threadAt(int x, int y) {
		return threads.at(x, y, getClientArea().width, scrolled());
	}

	Rectangle nameOf(Row row) {
		return RowLayout.nameOf(boundsOf(row), row, lineHeight);
	}

	Rectangle sheetOf(Row row) {
		return RowLayout.sheetOf(boundsOf(row), row, lineHeight);
	}

	/** Where the sign and the number of an element's findings are seen; of no width if it has none. */
	public Rectangle findingsOf(Element element) {
		return findingsOf(Row.of(element));
	}

	Rectangle findingsOf(Row row) {
		Rectangle place = nameOf(row);
		GC gc = new GC(this);
		int width = new RowMarks(gc, images).findingsWidth(rows.state(row).findings());
		gc.dispose();
		return new Rectangle(place.x + place.width - width, place.y, width, place.height);
	}

	private int scrolled() {
		return getVerticalBar().getSelection();
	}

	List<Row> rows() {
		return rows.list();
	}

	RowState state(Row row) {
		return rows.state(row);
	}

	/** The row at a height in pixels of the control; null where there is none. */
	Row rowAt(int y) {
		int inStack = y + scrolled();
		int index = rows.indexAt(inStack);
		return index < 0 || inStack >= rows.height() ? null : rows.list().get(index);
	}

	Row current() {
		return current;
	}

	/** The layer that the keys act on: that of the current row; null if there is none. */
	public Layer currentLayer() {
		return current == null ? null : current.layer();
	}

	/** What the current row and the selected ones can be asked to do. */
	public StackActions actions() {
		return actions;
	}

	/** Paints the rows between two heights; those beyond are not seen. */
	private void paint(GC gc, int from, int to) {
		Rectangle area = getClientArea();
		gc.setBackground(getBackground());
		gc.fillRectangle(area);
		StackPainter painter = new StackPainter(gc, images);
		Set<Element> selected = bench == null ? Set.of() : new HashSet<>(bench.selection());
		for (int i = Math.max(0, rows.indexAt(scrolled())); i < rows.list().size(); i++) {
			Row row = rows.list().get(i);
			Rectangle place = boundsOf(i);
			if (place.y > Math.min(area.height, to)) {
				break;
			}
			if (place.y + place.height < from) {
				continue;
			}
			if (row.isLayer()) {
				painter.paintLayer(place, row, rows.state(row), row.equals(current), isFocusControl());
			} else {
				painter.paintElement(place, row, rows.state(row), selected.contains(row.element()),
						row.equals(current), isFocusControl());
			}
		}
		brackets.paint(gc, scrolled());
		threads.paint(gc, area.width, scrolled(), mouse.thread());
		mouse.paint(painter, area.width);
	}

	void setCurrent(Row row) {
		current = row;
		reveal(row);
		redraw();
		StackAccess.moved(this);
	}

	private void reveal(Row row) {
		Rectangle place = boundsOf(row);
		int room = getClientArea().height;
		ScrollBar bar = getVerticalBar();
		if (place.y < 0) {
			bar.setSelection(bar.getSelection() + place.y);
		} else if (place.y + place.height > room) {
			bar.setSelection(bar.getSelection() + place.y + place.height - room);
		}
	}

	/** Has the row of what was selected on the bench seen. */
	void selectionChanged() {
		if (bench != null && !bench.selection().isEmpty() && !isFocusControl()) {
			Element last = bench.selection().get(bench.selection().size() - 1);
			rows.list().stream().filter(row -> row.element() == last).findFirst().ifPresent(row -> {
				current = row;
				reveal(row);
			});
		}
		redraw();
	}

	/** A row was pressed and let go where it was. */
	void clicked(Row row) {
		mouse.clicked(row);
	}

	/** Gives up whatever the pointer has begun. */
	void cancel() {
		mouse.cancel();
	}

	/** Lets the user type words in the place of a row's name. */
	void type(Row row, String words, String hint, Consumer<String> taken) {
		setCurrent(row);
		name.open(row, words, hint, taken);
	}

	void commitName() {
		name.commit();
	}

	void execute(Edit edit) {
		bench.edits().execute(edit);
	}

	@Override
	public Point computeSize(int widthHint, int heightHint, boolean changed) {
		int width = widthHint == SWT.DEFAULT ? 200 : widthHint;
		return new Point(width, heightHint == SWT.DEFAULT ? Math.max(rows.height(), 100) : heightHint);
	}
}
