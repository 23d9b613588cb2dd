package org.frisket.ui.material.internal.shelf;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockExchange;
import org.frisket.material.StockField;
import org.frisket.material.StockIds;
import org.frisket.material.shelf.StockChange;
import org.frisket.material.shelf.StockDraft;
import org.frisket.ui.material.internal.StudioShelf;

/**
 * The form of a stock, beside the work and not in its way. Nothing is kept while anything is wrong; what another desk
 * does to the stock meanwhile is told, and never overwritten unseen.
 */
public final class StockEditor extends TitleAreaDialog {

	private static final int PACK_ID = IDialogConstants.CLIENT_ID;
	private static final int BOTH_ID = IDialogConstants.CLIENT_ID + 1;
	private static final Point LARGEST = new Point(760, 640);

	private final StudioShelf shelf = StudioShelf.get();
	private final Consumer<String> saved;
	private final Runnable watcher = this::shelfChanged;
	private final StockDraft first;
	private Optional<ShelvedStock> seen;
	private StockForm form;
	private boolean saving;

	/**
	 * @param seen  the stock as it lay there when it was looked at; empty for a new one
	 * @param saved told the id of what was kept
	 */
	StockEditor(Shell parent, Optional<ShelvedStock> seen, StockDraft draft, Consumer<String> saved) {
		super(parent);
		this.seen = seen;
		this.first = draft;
		this.saved = saved;
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.MODELESS);
		setBlockOnOpen(false);
		setHelpAvailable(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(seen.map(there -> NLS.bind(Messages.StockEditor_title, there.stock().name()))
				.orElse(Messages.StockEditor_new));
		shell.addListener(SWT.Dispose, event -> shelf.removeListener(watcher));
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		form = new StockForm(area, first, this::changed);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(form.control());
		return area;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, PACK_ID, Messages.StockEditor_pack, false);
		createButton(parent, BOTH_ID, Messages.StockEditor_both, false).setVisible(false);
		createButton(parent, IDialogConstants.OK_ID, Messages.StockEditor_save, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.StockEditor_cancel, false);
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		setTitle(seen.map(there -> there.stock().name()).orElse(Messages.StockEditor_new));
		setMessage(Messages.StockEditor_message);
		shelf.addListener(watcher);
		form.field(StockField.NAME).setFocus();
		return contents;
	}

	@Override
	protected Point getInitialSize() {
		Point wanted = super.getInitialSize();
		return new Point(Math.min(LARGEST.x, wanted.x), Math.min(LARGEST.y, wanted.y));
	}

	private void changed() {
		if (!isOvertaken()) {
			setErrorMessage(null);
		}
	}

	private boolean isOvertaken() {
		return seen.isPresent() && shelf.isKnown() && shelf.trouble().isEmpty()
				&& !shelf.find(seen.get().stock().id()).map(ShelvedStock::revision).equals(seen.map(ShelvedStock::revision));
	}

	private void shelfChanged() {
		if (saving || getShell() == null || getShell().isDisposed()) {
			return;
		}
		boolean overtaken = isOvertaken();
		boolean there = seen.isPresent() && shelf.find(seen.get().stock().id()).isPresent();
		Button both = getButton(BOTH_ID);
		both.setVisible(overtaken && there);
		if (overtaken) {
			setErrorMessage(there ? Messages.StockEditor_overtaken : Messages.StockEditor_gone);
		}
	}

	@Override
	protected void buttonPressed(int id) {
		if (id == PACK_ID) {
			new PackDialog(getShell(), found -> found.forEach(form::put)).open();
		} else if (id == BOTH_ID) {
			takeBoth();
		} else {
			super.buttonPressed(id);
		}
	}

	/** What was typed here, laid over what the other desk has made of it. */
	private void takeBoth() {
		shelf.find(seen.orElseThrow().stock().id()).ifPresent(theirs -> {
			seen = Optional.of(theirs);
			form.show(form.draft().onto(theirs.stock()));
			setErrorMessage(null);
			getButton(BOTH_ID).setVisible(false);
		});
	}

	@Override
	protected void okPressed() {
		if (saving) {
			return;
		}
		if (!form.judge()) {
			setErrorMessage(Messages.StockEditor_problems);
			return;
		}
		Stock stock = form.draft().stock().orElseThrow();
		if (seen.isPresent() && stock.equals(seen.get().stock())) {
			super.okPressed();
			return;
		}
		saving = true;
		getButton(IDialogConstants.OK_ID).setEnabled(false);
		String[] id = new String[1];
		boolean ownId = !form.draft().text(StockField.ID).isBlank();
		String label = NLS.bind(seen.isPresent() ? Messages.StockEditor_change : Messages.StockEditor_add, stock.name());
		shelf.change(label, there -> {
			Stock whole = seen.isPresent() || ownId ? stock
					: stock.change().id(StockIds.free(stock.name(), there.ids()::contains)).build();
			id[0] = whole.id();
			return new StockChange(List.of(seen.isPresent() ? StockExchange.change(seen.get(), whole)
					: StockExchange.add(whole)));
		}, trouble -> kept(trouble, id[0]));
	}

	private void kept(Optional<String> trouble, String id) {
		saving = false;
		if (getShell() == null || getShell().isDisposed()) {
			return;
		}
		getButton(IDialogConstants.OK_ID).setEnabled(true);
		if (trouble.isPresent()) {
			shelf.refresh();
			setErrorMessage(trouble.get());
		} else {
			super.okPressed();
			saved.accept(id);
		}
	}

	/** The control of a field. */
	public Control field(StockField field) {
		return form.field(field);
	}

	/** What is said to be wrong with a field; empty if nothing is. */
	public String problem(StockField field) {
		return form.problem(field);
	}
}
