package org.frisket.ui.material.internal.shelf;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.material.Stock;
import org.frisket.material.shelf.ShelfList;
import org.frisket.material.shelf.ShelfOrder;
import org.frisket.material.shelf.StockChange;
import org.frisket.prepare.StockCatalogues;
import org.frisket.ui.material.internal.StudioShelf;
import org.frisket.ui.studio.StoreJob;

/** The stock of all catalogues at hand, built in or brought by bundles, to be taken over one by one or as it is found. */
public final class CatalogueDialog extends TitleAreaDialog {

	private static final int TAKE_ID = IDialogConstants.CLIENT_ID;
	private static final int ALL_ID = IDialogConstants.CLIENT_ID + 1;
	private static final int MARGIN_PX = 8;
	private static final Point SIZE = new Point(520, 560);

	private final StudioShelf shelf = StudioShelf.get();
	private final Runnable watcher = this::shelfChanged;
	private ShelfList<StockCatalogues.Entry> list = list(List.of());
	private List<StockCatalogues.Entry> shown = List.of();
	private Text filter;
	private ShelfCanvas canvas;

	CatalogueDialog(Shell parent) {
		super(parent);
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.MODELESS);
		setBlockOnOpen(false);
		setHelpAvailable(false);
	}

	private static ShelfList<StockCatalogues.Entry> list(List<StockCatalogues.Entry> entries) {
		return new ShelfList<>(entries, StockCatalogues.Entry::stock, StockText::words);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.CatalogueDialog_title);
		shell.addListener(SWT.Dispose, event -> shelf.removeListener(watcher));
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).applyTo(area);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		filter = new Text(area, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		filter.setMessage(Messages.ShelfView_filter);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
		canvas = new ShelfCanvas(area, new Client(), this::remark);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
		filter.addListener(SWT.Modify, event -> find());
		filter.addListener(SWT.KeyDown, event -> {
			if ((event.keyCode == SWT.ARROW_DOWN || event.keyCode == SWT.ARROW_UP)
					&& ShelfKeys.went(canvas, event.keyCode)) {
				event.doit = false;
			}
		});
		return area;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, ALL_ID, Messages.CatalogueDialog_all, false);
		createButton(parent, TAKE_ID, Messages.CatalogueDialog_take, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.CatalogueDialog_close, false);
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		setTitle(Messages.CatalogueDialog_heading);
		setMessage(Messages.CatalogueDialog_message);
		shelf.addListener(watcher);
		new StoreJob<>(Messages.CatalogueDialog_reading, StockCatalogues::open, this::opened, this::setErrorMessage).schedule();
		filter.setFocus();
		return contents;
	}

	@Override
	protected Point getInitialSize() {
		return SIZE;
	}

	private void opened(StockCatalogues catalogues) {
		if (!canvas.isDisposed()) {
			list = list(catalogues.entries());
			if (!catalogues.failures().isEmpty()) {
				setErrorMessage(String.join("\n", catalogues.failures())); //$NON-NLS-1$
			}
			find();
		}
	}

	private void find() {
		shown = list.find(filter.getText(), ShelfOrder.FAMILY, false);
		canvas.show(shown.stream().map(StockCatalogues.Entry::stock).toList());
		getButton(ALL_ID).setText(NLS.bind(Messages.CatalogueDialog_all, untaken().size()));
		enable();
	}

	private List<Stock> untaken() {
		return shown.stream().map(StockCatalogues.Entry::stock).filter(stock -> !isThere(stock)).toList();
	}

	private boolean isThere(Stock stock) {
		return shelf.find(stock.id()).isPresent();
	}

	private String remark(Stock stock) {
		if (isThere(stock)) {
			return Messages.CatalogueDialog_there;
		}
		return shown.stream().filter(entry -> entry.stock().equals(stock)).findFirst().map(StockCatalogues.Entry::catalogue)
				.orElse(""); //$NON-NLS-1$
	}

	private void enable() {
		getButton(TAKE_ID).setEnabled(canvas.selection().filter(stock -> !isThere(stock)).isPresent());
		getButton(ALL_ID).setEnabled(!untaken().isEmpty());
	}

	private void shelfChanged() {
		if (canvas != null && !canvas.isDisposed()) {
			find();
			canvas.redraw();
		}
	}

	private final class Client implements ShelfCanvas.Client {

		@Override
		public void selected(Stock stock) {
			if (getButton(TAKE_ID) != null) {
				enable();
			}
		}

		@Override
		public void chosen(Stock stock) {
			take(List.of(stock));
		}

		@Override
		public void typed(char character) {
			filter.setText(character == 0 ? "" : filter.getText() + character); //$NON-NLS-1$
			filter.setFocus();
			filter.setSelection(filter.getText().length());
		}
	}

	@Override
	protected void buttonPressed(int id) {
		if (id == TAKE_ID) {
			canvas.selection().ifPresent(stock -> take(List.of(stock)));
		} else if (id == ALL_ID) {
			take(untaken());
		} else {
			super.buttonPressed(id);
		}
	}

	private void take(List<Stock> stocks) {
		List<Stock> taken = stocks.stream().filter(stock -> !isThere(stock)).toList();
		if (taken.isEmpty()) {
			return;
		}
		String label = taken.size() == 1 ? NLS.bind(Messages.StockEditor_add, taken.get(0).name())
				: NLS.bind(Messages.CatalogueDialog_takeSome, taken.size());
		shelf.change(label, there -> StockChange.put(taken, List.of()), this::took);
	}

	private void took(Optional<String> trouble) {
		if (getShell() != null && !getShell().isDisposed()) {
			setErrorMessage(trouble.orElse(null));
		}
	}

	/** The list of what can be taken. */
	public ShelfCanvas canvas() {
		return canvas;
	}
}
