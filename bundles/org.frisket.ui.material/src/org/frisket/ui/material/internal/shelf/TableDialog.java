package org.frisket.ui.material.internal.shelf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.List;
import org.eclipse.swt.widgets.Shell;
import org.frisket.material.StockShelf;
import org.frisket.material.csv.CsvReading;
import org.frisket.material.csv.StockImport;
import org.frisket.material.shelf.StockChange;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Store;
import org.frisket.ui.material.internal.StudioShelf;
import org.frisket.ui.studio.StoreJob;

/** A table on its way to the shelf: how many rows are good, and what is wrong with the others, row by row. */
public final class TableDialog extends TitleAreaDialog {

	private static final int MARGIN_PX = 12;
	private static final int TOLD = 500;
	private static final Point SIZE = new Point(640, 420);

	private final StudioShelf shelf = StudioShelf.get();
	private final Path file;
	private Label good;
	private List problems;
	private Button replace;
	private Button skip;
	private StockImport read;
	private boolean taking;

	TableDialog(Shell parent, Path file) {
		super(parent);
		this.file = file;
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.MODELESS);
		setBlockOnOpen(false);
		setHelpAvailable(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.TableDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).applyTo(area);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		good = new Label(area, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(good);
		problems = new List(area, SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(problems);
		replace = new Button(area, SWT.CHECK);
		replace.setText(Messages.TableDialog_replace);
		replace.addListener(SWT.Selection, event -> read());
		skip = new Button(area, SWT.CHECK);
		skip.setText(Messages.TableDialog_skip);
		skip.addListener(SWT.Selection, event -> enable());
		return area;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.TableDialog_take, true).setEnabled(false);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.TableDialog_cancel, false);
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		setTitle(NLS.bind(Messages.TableDialog_heading, file.getFileName()));
		read();
		return contents;
	}

	@Override
	protected Point getInitialSize() {
		return SIZE;
	}

	private void read() {
		getButton(IDialogConstants.OK_ID).setEnabled(false);
		setErrorMessage(null);
		setMessage(Messages.TableDialog_reading);
		boolean replacing = replace.getSelection();
		new StoreJob<>(Messages.TableDialog_reading, () -> read(replacing), this::show, this::refused).schedule();
	}

	private StockImport read(boolean replacing) throws IOException {
		byte[] content = TableFiles.read(file);
		try (Store store = Store.openForReading(Studio.folder(), StockShelf.AREA)) {
			return StockImport.of(content, new StockShelf(store), replacing);
		}
	}

	private boolean isOpen() {
		return getShell() != null && !getShell().isDisposed();
	}

	private void refused(String trouble) {
		if (isOpen()) {
			taking = false;
			setErrorMessage(trouble);
			enable();
		}
	}

	private void show(StockImport table) {
		if (!isOpen()) {
			return;
		}
		read = table;
		good.setText(NLS.bind(Messages.TableDialog_good, table.rows().size(), table.problems().size()));
		problems.removeAll();
		table.remarks().forEach(problems::add);
		table.problems().stream().limit(TOLD).forEach(problem -> problems.add(problem.toString()));
		if (table.problems().size() > TOLD) {
			problems.add(NLS.bind(Messages.TableDialog_more, table.problems().size() - TOLD));
		}
		setErrorMessage(table.usable() ? null : Messages.TableDialog_unusable);
		setMessage(table.problems().isEmpty() ? Messages.TableDialog_whole : Messages.TableDialog_message);
		good.getParent().layout();
		enable();
	}

	private void enable() {
		boolean some = read != null && read.usable() && !read.rows().isEmpty();
		boolean bad = read != null && !read.problems().isEmpty();
		skip.setEnabled(some && bad);
		getButton(IDialogConstants.OK_ID).setEnabled(some && !taking && (!bad || skip.getSelection()));
	}

	@Override
	protected void okPressed() {
		taking = true;
		enable();
		StockImport table = read;
		boolean replacing = replace.getSelection();
		// where nothing is to be replaced, a stock that has come there since is refused by its id
		shelf.change(NLS.bind(Messages.TableDialog_step, file.getFileName()),
				there -> StockChange.put(table.rows().stream().map(CsvReading.Row::stock).toList(),
						replacing ? there.list() : java.util.List.of()),
				this::took);
	}

	private void took(Optional<String> trouble) {
		if (trouble.isPresent()) {
			refused(trouble.get());
		} else if (isOpen()) {
			super.okPressed();
		}
	}
}
