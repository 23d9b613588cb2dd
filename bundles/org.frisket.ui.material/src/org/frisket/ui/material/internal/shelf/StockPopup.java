package org.frisket.ui.material.internal.shelf;

import java.util.List;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.editing.Edit;
import org.frisket.editing.layers.SetLayerStock;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.shelf.ShelfList;
import org.frisket.material.shelf.ShelfOrder;
import org.frisket.model.Layer;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.material.internal.StudioShelf;

/**
 * The shelf under a layer of the stack: type to look for a stock, Enter takes it. What is on no shelf can be typed as well;
 * Escape or a click elsewhere leaves the layer as it is.
 */
public final class StockPopup {

	private static final Point SIZE = new Point(400, 360);
	private static final int SPACE_PX = 4;
	private static final String NODE = "org.frisket.ui.material"; //$NON-NLS-1$
	private static final String COLOUR_KEY = "layerTakesColour"; //$NON-NLS-1$

	private final JobOnBench bench;
	private final Layer layer;
	private final StudioShelf shelf = StudioShelf.get();
	private final Runnable watcher = this::refresh;
	private final Shell shell;
	private final Text filter;
	private final ShelfCanvas canvas;
	private final Button colour;
	private final Label foot;
	private final Button typed;

	StockPopup(JobOnBench bench, Layer layer, Control control, Rectangle place) {
		this.bench = bench;
		this.layer = layer;
		shell = new Shell(control.getShell(), SWT.TOOL | SWT.NO_TRIM);
		shell.setData(this);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, SPACE_PX).applyTo(shell);
		filter = new Text(shell, SWT.SEARCH | SWT.ICON_SEARCH);
		filter.setMessage(Messages.StockPopup_filter);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
		canvas = new ShelfCanvas(shell, new Client(), stock -> null);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
		foot = new Label(shell, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(SIZE.x - 2 * SPACE_PX, SWT.DEFAULT).applyTo(foot);
		colour = new Button(shell, SWT.CHECK);
		colour.setText(Messages.StockPopup_colour);
		colour.setSelection(preferences().getBoolean(COLOUR_KEY, true));
		Composite row = new Composite(shell, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(row);
		typed = button(row, Messages.StockPopup_typed, this::takeTyped);
		button(row, Messages.StockPopup_none, () -> take(new SetLayerStock(layer, null)))
				.setEnabled(layer.getStock() != null);
		filter.addListener(SWT.Modify, event -> find());
		filter.addListener(SWT.KeyDown, this::key);
		filter.addListener(SWT.Traverse, this::traverse);
		shell.addListener(SWT.Traverse, this::traverse);
		shell.addListener(SWT.Deactivate, event -> close());
		shell.addListener(SWT.Dispose, event -> shelf.removeListener(watcher));
		shell.setBounds(bounds(control, place));
		shelf.addListener(watcher);
		refresh();
		canvas.select(String.valueOf(layer.getStock()));
		shell.open();
		filter.setFocus();
	}

	private static IEclipsePreferences preferences() {
		return InstanceScope.INSTANCE.getNode(NODE);
	}

	private static Button button(Composite row, String text, Runnable action) {
		Button button = new Button(row, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> action.run());
		return button;
	}

	private static Rectangle bounds(Control control, Rectangle place) {
		Point corner = control.toDisplay(place.x, place.y + place.height);
		Rectangle screen = control.getMonitor().getClientArea();
		int x = Math.max(screen.x, Math.min(corner.x, screen.x + screen.width - SIZE.x));
		int y = corner.y + SIZE.y <= screen.y + screen.height ? corner.y
				: Math.max(screen.y, corner.y - place.height - SIZE.y);
		return new Rectangle(x, y, SIZE.x, SIZE.y);
	}

	private void refresh() {
		if (!shell.isDisposed()) {
			find();
		}
	}

	private void find() {
		List<ShelvedStock> all = shelf.stocks();
		String words = filter.getText().strip();
		canvas.show(new ShelfList<>(all, ShelvedStock::stock, StockText::words).find(words, ShelfOrder.NAME, false).stream()
				.map(ShelvedStock::stock).toList());
		typed.setEnabled(!words.isEmpty());
		foot.setText(all.isEmpty() ? Messages.StockPopup_empty
				: canvas.stocks().isEmpty() ? NLS.bind(Messages.StockPopup_free, words.replace("&", "&&")) //$NON-NLS-1$ //$NON-NLS-2$
						: Messages.StockPopup_hint);
		shell.layout();
	}

	private void key(Event event) {
		if (event.keyCode != SWT.HOME && event.keyCode != SWT.END && ShelfKeys.went(canvas, event.keyCode)) {
			event.doit = false;
		}
	}

	private void traverse(Event event) {
		if (event.detail == SWT.TRAVERSE_ESCAPE) {
			event.doit = false;
			close();
		} else if (event.detail == SWT.TRAVERSE_RETURN && event.widget == filter) {
			event.doit = false;
			if ((event.stateMask & SWT.MOD1) != 0 || canvas.selection().isEmpty()) {
				takeTyped();
			} else {
				canvas.selection().ifPresent(this::take);
			}
		}
	}

	private void takeTyped() {
		String words = filter.getText().strip();
		if (words.isEmpty()) {
			close();
		} else {
			take(new SetLayerStock(layer, words));
		}
	}

	private void take(Stock stock) {
		preferences().putBoolean(COLOUR_KEY, colour.getSelection());
		take(LayerStock.of(layer, stock, colour.getSelection()));
	}

	private void take(Edit edit) {
		close();
		// the layer may have gone with an undo while the list was open
		if (layer.eContainer() == bench.job()) {
			bench.edits().execute(edit);
		}
	}

	private void close() {
		if (!shell.isDisposed()) {
			shell.dispose();
		}
	}

	private final class Client implements ShelfCanvas.Client {

		@Override
		public void chosen(Stock stock) {
			take(stock);
		}

		@Override
		public void typed(char character) {
			if (character != 0) {
				filter.setText(filter.getText() + character);
				filter.setFocus();
				filter.setSelection(filter.getText().length());
			} else {
				close();
			}
		}
	}

	/** Where the words are typed that are looked for. */
	public Text filter() {
		return filter;
	}

	/** What can be chosen. */
	public ShelfCanvas canvas() {
		return canvas;
	}

	/** Whether the layer is to be shown in the colour of its stock. */
	public Button colour() {
		return colour;
	}
}
