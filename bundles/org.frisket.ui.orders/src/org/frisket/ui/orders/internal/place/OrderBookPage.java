package org.frisket.ui.orders.internal.place;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.dialogs.ProgressMonitorDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.orders.internal.backup.BackupRun;
import org.frisket.ui.orders.internal.backup.RestoreRun;
import org.frisket.ui.studio.StoreJob;
import org.frisket.ui.studio.StoreWatch;

/** Where the order book is: in the studio's folder, or on a server. What is changed here takes effect at once. */
public final class OrderBookPage extends PreferencePage implements IWorkbenchPreferencePage {

	private static final int LINE_PX = 420;
	private static final int INDENT_PX = 20;

	private Button inFolder;
	private Button onServer;
	private Text server;
	private Text database;
	private Text user;
	private Text password;
	private Button keep;
	private Button tryOut;
	private Button copy;
	private Label news;
	/** What else stands in the address. */
	private String more = ""; //$NON-NLS-1$
	private Optional<String> before = Optional.empty();

	@Override
	public void init(IWorkbench workbench) {
		noDefaultAndApplyButton();
	}

	@Override
	protected Control createContents(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 8).applyTo(page);
		inFolder = button(page, SWT.RADIO, NLS.bind(Messages.OrderBookPage_folder, Studio.folder().path()), 0);
		onServer = button(page, SWT.RADIO, Messages.OrderBookPage_onServer, 0);
		server = text(page, Messages.OrderBookPage_server, SWT.NONE);
		server.setMessage(Messages.OrderBookPage_serverHint);
		database = text(page, Messages.OrderBookPage_database, SWT.NONE);
		user = text(page, Messages.OrderBookPage_user, SWT.NONE);
		password = text(page, Messages.OrderBookPage_password, SWT.PASSWORD);
		password.setToolTipText(Messages.OrderBookPage_passwordHint);
		keep = button(page, SWT.CHECK, Messages.OrderBookPage_keep, INDENT_PX);
		keep.setSelection(true);
		tryOut = new Button(page, SWT.PUSH);
		tryOut.setText(Messages.OrderBookPage_try);
		tryOut.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> tryOut()));
		GridDataFactory.swtDefaults().indent(INDENT_PX, 0).applyTo(tryOut);
		news = note(page, "", 1); //$NON-NLS-1$
		copy = button(page, SWT.CHECK, Messages.OrderBookPage_copy, 0);
		copy.setSelection(true);
		note(page, Messages.OrderBookPage_stays, 2);
		createBackup(page);
		show();
		return page;
	}

	private void createBackup(Composite page) {
		note(page, Messages.OrderBookPage_whole, 2);
		Composite buttons = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(buttons);
		GridDataFactory.fillDefaults().span(2, 1).indent(INDENT_PX, 0).applyTo(buttons);
		push(buttons, Messages.OrderBookPage_backUp, () -> new BackupRun(getShell()).askForFile());
		push(buttons, Messages.OrderBookPage_restore, () -> new RestoreRun(getShell()).askForFile());
	}

	private static void push(Composite in, String label, Runnable pressed) {
		Button button = new Button(in, SWT.PUSH);
		button.setText(label);
		button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> pressed.run()));
	}

	private Button button(Composite page, int style, String label, int indent) {
		Button button = new Button(page, style);
		button.setText(label);
		button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> check()));
		GridDataFactory.fillDefaults().span(2, 1).indent(indent, 0).applyTo(button);
		return button;
	}

	private Text text(Composite page, String label, int style) {
		Label name = new Label(page, SWT.NONE);
		name.setText(label);
		GridDataFactory.swtDefaults().indent(INDENT_PX, 0).applyTo(name);
		Text text = new Text(page, SWT.BORDER | style);
		Named.as(label, text);
		text.addModifyListener(event -> check());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
		return text;
	}

	private static Label note(Composite page, String words, int columns) {
		Label note = new Label(page, SWT.WRAP);
		note.setText(words);
		GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).align(SWT.FILL, SWT.CENTER)
				.hint(columns > 1 ? LINE_PX : SWT.DEFAULT, SWT.DEFAULT).applyTo(note);
		return note;
	}

	/** What is so now. */
	private void show() {
		try {
			before = Databases.address(Studio.folder());
		} catch (IOException e) {
			setErrorMessage(e.getMessage());
		}
		ServerAddress address = before.map(ServerAddress::of).orElse(new ServerAddress("", "", "", "")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
		more = address.more();
		inFolder.setSelection(before.isEmpty());
		onServer.setSelection(before.isPresent());
		server.setText(before.isPresent() && address.isWhole() ? Databases.withoutSecrets(address.server())
				: address.server());
		database.setText(address.database());
		user.setText(address.user());
		check();
		if (Databases.isChosen()) {
			setMessage(Messages.OrderBookPage_chosen, INFORMATION);
		}
	}

	private ServerAddress address() {
		return new ServerAddress(server.getText(), database.getText(), user.getText(), more);
	}

	private Optional<String> chosen() {
		return onServer.getSelection() ? Optional.of(address().text()) : Optional.empty();
	}

	/** Everything that may be done with what stands in the fields. */
	private void check() {
		if (copy == null) {
			return;
		}
		boolean shared = onServer.getSelection();
		boolean free = !Databases.isChosen();
		inFolder.setEnabled(free);
		onServer.setEnabled(free);
		server.setEnabled(shared && free);
		database.setEnabled(shared && free && !address().isWhole());
		user.setEnabled(shared && free && !address().isWhole());
		password.setEnabled(shared);
		keep.setEnabled(shared && password.getCharCount() > 0);
		Optional<String> problem = shared ? address().problem() : Optional.empty();
		tryOut.setEnabled(shared && problem.isEmpty());
		copy.setEnabled(free && problem.isEmpty() && !chosen().equals(before));
		news.setText(""); //$NON-NLS-1$
		setErrorMessage(null);
		setMessage(problem.orElse(null), problem.isPresent() ? INFORMATION : NONE);
		setValid(problem.isEmpty());
	}

	private Optional<String> typedPassword() {
		return Optional.of(password.getText()).filter(text -> !text.isEmpty());
	}

	private void tryOut() {
		String address = address().text();
		Optional<String> typed = typedPassword();
		tryOut.setEnabled(false);
		setErrorMessage(null);
		news.setText(Messages.OrderBookPage_trying);
		new StoreJob<>(Messages.OrderBookPage_trying, () -> Place.look(address, typed), this::tried, this::refused)
				.schedule();
	}

	private void tried(String words) {
		if (!news.isDisposed()) {
			tryOut.setEnabled(true);
			news.setText(words);
			news.getParent().layout();
		}
	}

	private void refused(String reason) {
		if (!news.isDisposed()) {
			tryOut.setEnabled(true);
			news.setText(""); //$NON-NLS-1$
			setErrorMessage(reason);
		}
	}

	@Override
	public boolean performOk() {
		if (news == null) {
			// never shown
			return true;
		}
		StudioFolder studio = Studio.folder();
		Optional<String> address = chosen();
		Optional<String> typed = typedPassword();
		boolean keeps = keep.getSelection();
		boolean copies = copy.isEnabled() && copy.getSelection();
		boolean changes = !Databases.isChosen();
		try {
			new ProgressMonitorDialog(getShell()).run(true, true,
					monitor -> apply(studio, address, typed, keeps, changes, copies, monitor));
		} catch (InvocationTargetException e) {
			setErrorMessage(e.getCause().getMessage());
			return false;
		} catch (InterruptedException calledOff) {
			return false;
		}
		StoreWatch.get().changed();
		return true;
	}

	private static void apply(StudioFolder studio, Optional<String> address, Optional<String> typed, boolean keeps,
			boolean changes, boolean copies, IProgressMonitor monitor) throws InvocationTargetException,
			InterruptedException {
		try {
			if (address.isPresent() && typed.isPresent()) {
				// before it is used, and kept only when it did work
				Place.look(address.get(), typed);
				KeptPasswords.remember(address.get(), typed.get());
			}
			if (changes) {
				Place.change(studio, address, copies, monitor);
			}
			if (address.isPresent() && typed.isPresent()) {
				if (keeps) {
					KeptPasswords.keep(address.get(), typed.get());
				} else {
					KeptPasswords.forget(address.get());
					KeptPasswords.remember(address.get(), typed.get());
				}
			}
		} catch (OperationCanceledException e) {
			throw new InterruptedException();
		} catch (IOException e) {
			throw new InvocationTargetException(e);
		}
	}
}
