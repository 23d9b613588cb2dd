package org.frisket.ui.views.internal.stack;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;
import org.eclipse.ui.IWorkbenchPartSite;
import org.frisket.editing.Edit;
import org.frisket.editing.MoveLayer;
import org.frisket.editing.RenameLayer;
import org.frisket.editing.SetLayers;
import org.frisket.model.Element;
import org.frisket.model.Layer;
import org.frisket.ui.bench.JobOnBench;

/** The control that draws the stack and takes what pointer and keys do to it. */
public final class StackCanvas extends Canvas {

	private final LocalResourceManager images = new LocalResourceManager(JFaceResources.getResources(), this);
	private final int lineHeight;
	private final LayerDrag drag = new LayerDrag(this);
	private final LayerName name;
	private JobOnBench bench;
	private StackRows rows;
	private Row current;

	StackCanvas(Composite parent, IWorkbenchPartSite site) {
		super(parent, SWT.V_SCROLL | SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
		name = new LayerName(this, site);
		GC gc = new GC(this);
		lineHeight = gc.getFontMetrics().getHeight();
		gc.dispose();
		rows = new StackRows(null, lineHeight);
		setBackground(getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.Resize, event -> {
			updateScroll();
			name.place();
		});
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		addListener(SWT.KeyDown, this::key);
		addListener(SWT.MouseDown, this::mouseDown);
		addListener(SWT.MouseDoubleClick, this::doubleClick);
		addListener(SWT.MouseMove, this::hover);
		getVerticalBar().addListener(SWT.Selection, event -> {
			name.place();
			redraw();
		});
		StackAccess.install(this);
	}

	/** Shows the layers of a job; null for none. */
	void show(JobOnBench newBench) {
		bench = newBench;
		refresh();
	}

	JobOnBench bench() {
		return bench;
	}

	/** Takes up what has changed in the job. */
	void refresh() {
		name.close();
		rows = new StackRows(bench, lineHeight);
		if (!rows.list().contains(current)) {
			current = rows.list().stream().filter(Row::isLayer).findFirst().orElse(null);
		}
		updateScroll();
		redraw();
	}

	private void updateScroll() {
		ScrollBar bar = getVerticalBar();
		int room = getClientArea().height;
		int height = rows.height();
		bar.setVisible(height > room);
		bar.setValues(Math.min(bar.getSelection(), Math.max(0, height - room)), 0, Math.max(height, 1),
				Math.max(1, Math.min(room, height)), lineHeight, Math.max(1, room - lineHeight));
	}

	/** Where a row is seen, in pixels of the control. */
	public Rectangle boundsOf(Row row) {
		int index = rows.list().indexOf(row);
		return index < 0 ? new Rectangle(0, 0, 0, 0) : boundsOf(index);
	}

	private Rectangle boundsOf(int index) {
		return new Rectangle(0, rows.topOf(index) - getVerticalBar().getSelection(), getClientArea().width,
				rows.heightOf(index));
	}

	/** Where the row of a layer is seen. */
	public Rectangle boundsOf(Layer layer) {
		return boundsOf(new Row(layer, null));
	}

	/** Where the row of an element is seen. */
	public Rectangle boundsOf(Element element) {
		return rows.list().stream().filter(row -> row.element() == element).findFirst().map(this::boundsOf)
				.orElse(new Rectangle(0, 0, 0, 0));
	}

	Rectangle nameOf(Layer layer) {
		return StackPainter.nameOf(boundsOf(layer), lineHeight);
	}

	List<Row> rows() {
		return rows.list();
	}

	/** The row at a height in pixels of the control; null below the last. */
	Row rowAt(int y) {
		int inStack = y + getVerticalBar().getSelection();
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

	private void paint(GC gc) {
		Rectangle area = getClientArea();
		gc.setBackground(getBackground());
		gc.fillRectangle(area);
		StackPainter painter = new StackPainter(gc, images);
		Set<Element> selected = bench == null ? Set.of() : new HashSet<>(bench.selection());
		for (int i = Math.max(0, rows.indexAt(getVerticalBar().getSelection())); i < rows.list().size(); i++) {
			Row row = rows.list().get(i);
			Rectangle place = boundsOf(i);
			if (place.y > area.height) {
				break;
			}
			if (row.isLayer()) {
				painter.paintLayer(place, row.layer(), rows.state(row.layer()), row.equals(current), isFocusControl());
			} else {
				painter.paintElement(place, row, rows.findingsOf(row), selected.contains(row.element()),
						row.equals(current), isFocusControl());
			}
		}
		drag.paint(painter, area.width);
	}

	private void mouseDown(Event event) {
		setFocus();
		name.commit();
		Row row = rowAt(event.y);
		if (row == null || event.button != 1) {
			return;
		}
		Rectangle place = boundsOf(row);
		if (row.isLayer()) {
			setCurrent(row);
			if (StackPainter.eyeOf(place).contains(event.x, event.y)) {
				toggleVisible();
			} else if (StackPainter.pinOf(place).contains(event.x, event.y)) {
				toggleLocked();
			} else {
				drag.press(row.layer(), event.y);
			}
		} else {
			select(row, (event.stateMask & SWT.MOD1) != 0);
		}
	}

	private void doubleClick(Event event) {
		Row row = rowAt(event.y);
		if (row != null && row.isLayer() && event.x >= nameOf(row.layer()).x) {
			drag.cancel();
			rename();
		}
	}

	private void hover(Event event) {
		Row row = rowAt(event.y);
		String tip = null;
		if (row != null && row.isLayer()) {
			if (StackPainter.eyeOf(boundsOf(row)).contains(event.x, event.y)) {
				tip = row.layer().isVisible() ? Messages.StackCanvas_hide : Messages.StackCanvas_show;
			} else if (StackPainter.pinOf(boundsOf(row)).contains(event.x, event.y)) {
				tip = row.layer().isLocked() ? Messages.StackCanvas_unlock : Messages.StackCanvas_lock;
			}
		}
		if (!Objects.equals(tip, getToolTipText())) {
			setToolTipText(tip);
		}
	}

	private void select(Row row, boolean toggle) {
		setCurrent(row);
		List<Element> selection = new ArrayList<>();
		if (toggle) {
			selection.addAll(bench.selection());
		}
		if (!toggle || !selection.remove(row.element())) {
			selection.add(row.element());
		}
		bench.select(selection);
	}

	private void key(Event event) {
		if ((event.stateMask & SWT.MODIFIER_MASK) != 0 || bench == null || rows.list().isEmpty()) {
			if (event.keyCode == SWT.TAB) {
				traverse((event.stateMask & SWT.SHIFT) != 0 ? SWT.TRAVERSE_TAB_PREVIOUS : SWT.TRAVERSE_TAB_NEXT);
			}
			return;
		}
		int index = rows.list().indexOf(current);
		switch (event.keyCode) {
		case SWT.ARROW_UP -> go(index - 1);
		case SWT.ARROW_DOWN -> go(index + 1);
		case SWT.HOME -> go(0);
		case SWT.END -> go(rows.list().size() - 1);
		case SWT.SPACE -> selectAllOf(currentLayer());
		case SWT.ESC -> drag.cancel();
		case SWT.TAB -> traverse(SWT.TRAVERSE_TAB_NEXT);
		default -> {
			// left to the commands
		}
		}
	}

	private void go(int index) {
		if (index >= 0 && index < rows.list().size()) {
			Row row = rows.list().get(index);
			if (row.isLayer()) {
				setCurrent(row);
			} else {
				select(row, false);
			}
		}
	}

	private void selectAllOf(Layer layer) {
		if (layer != null) {
			bench.select(layer.getElements());
		}
	}

	private void setCurrent(Row row) {
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

	/** Shows the current layer, or hides it. */
	public void toggleVisible() {
		if (currentLayer() != null) {
			execute(SetLayers.visible(List.of(currentLayer()), !currentLayer().isVisible()));
		}
	}

	/** Pins the current layer, or unpins it. */
	public void toggleLocked() {
		if (currentLayer() != null) {
			execute(SetLayers.locked(List.of(currentLayer()), !currentLayer().isLocked()));
		}
	}

	/** Moves the current layer up by some layers; down if negative. */
	public void raise(int layers) {
		if (currentLayer() != null) {
			execute(new MoveLayer(currentLayer(), bench.job().getLayers().indexOf(currentLayer()) + layers));
			setCurrent(current);
		}
	}

	/** Lets the user type another name for the current layer, in its place. */
	public void rename() {
		if (currentLayer() != null) {
			setCurrent(new Row(currentLayer(), null));
			name.open(currentLayer());
		}
	}

	void renamed(Layer layer, String newName) {
		execute(new RenameLayer(layer, newName));
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
