package org.frisket.ui.orders.internal.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.orders.Entry;
import org.frisket.orders.intake.OrderMapping;
import org.frisket.orders.intake.OrderReading;
import org.frisket.orders.intake.RememberedMappings;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.orders.internal.Words;

/** Shows what a table of orders comes to, and takes it in; the same window tells what was taken in. */
public final class IntakeDialog extends TitleAreaDialog {

	private static final int MARGIN_PX = 12;
	private static final int SPACE_PX = 8;
	private static final int WIDTH_PX = 760;
	private static final int HEIGHT_PX = 640;
	private static final int STEPS = 1000;

	private final Path file;
	private final IntakeReader reader;
	private Combo names;
	private IntakeColumns columns;
	private Button skipKnown;
	private IntakeTables tables;
	private Text remember;
	private ProgressBar progress;
	private OrderReading reading;
	private Job running;

	public IntakeDialog(Shell parent, Path file) {
		super(parent);
		setBlockOnOpen(false);
		this.file = file;
		reader = new IntakeReader(file, this::seen, this::refused);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.IntakeDialog_title);
		shell.setMinimumSize(WIDTH_PX / 2, HEIGHT_PX / 2);
	}

	@Override
	protected boolean isResizable() {
		return true;
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(MARGIN_PX, MARGIN_PX).spacing(SPACE_PX, SPACE_PX)
				.applyTo(area);
		GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH_PX, HEIGHT_PX).applyTo(area);
		setTitle(NLS.bind(Messages.IntakeDialog_file, file.getFileName()));
		setMessage(Messages.IntakeDialog_reading);
		new Label(area, SWT.NONE).setText(Messages.IntakeDialog_recall);
		names = new Combo(area, SWT.READ_ONLY);
		Named.as(Messages.IntakeDialog_recall, names);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(names);
		names.setItems(Messages.IntakeDialog_guess);
		names.select(0);
		names.addListener(SWT.Selection, event -> recall());
		columns = new IntakeColumns(area, this::again);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(columns);
		skipKnown = new Button(area, SWT.CHECK);
		skipKnown.setText(Messages.IntakeDialog_skip);
		skipKnown.setSelection(true);
		GridDataFactory.fillDefaults().span(2, 1).applyTo(skipKnown);
		skipKnown.addListener(SWT.Selection, event -> again());
		tables = new IntakeTables(area);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, true).applyTo(tables);
		new Label(area, SWT.NONE).setText(Messages.IntakeDialog_remember);
		remember = new Text(area, SWT.BORDER);
		remember.setMessage(Messages.IntakeDialog_rememberHint);
		Named.as(Messages.IntakeDialog_remember, remember);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(remember);
		remember.addListener(SWT.Modify, event -> tell());
		progress = new ProgressBar(area, SWT.SMOOTH);
		progress.setMaximum(STEPS);
		progress.setVisible(false);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(progress);
		return area;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.IntakeDialog_take, true).setEnabled(false);
		createButton(parent, IDialogConstants.CANCEL_ID, Words.CANCEL, false);
		reader.first();
	}

	private boolean isOpen() {
		return getShell() != null && !getShell().isDisposed();
	}

	private void recall() {
		unread();
		if (names.getSelectionIndex() <= 0) {
			reader.by(OrderMapping.GUESSED, skipKnown.getSelection());
		} else {
			reader.recalled(names.getText(), skipKnown.getSelection());
		}
	}

	private void again() {
		unread();
		reader.by(columns.mapping(), skipKnown.getSelection());
	}

	/** What was read is no longer what would be taken in. */
	private void unread() {
		reading = null;
		getButton(IDialogConstants.OK_ID).setEnabled(false);
	}

	private void seen(IntakeReader.Sight sight) {
		if (!isOpen()) {
			return;
		}
		reading = sight.reading();
		List<String> all = new ArrayList<>(List.of(Messages.IntakeDialog_guess));
		all.addAll(sight.names());
		String shown = sight.recalled().orElse(names.getText());
		names.setItems(all.toArray(String[]::new));
		names.select(Math.max(0, all.indexOf(shown)));
		sight.recalled().ifPresent(remember::setText);
		columns.show(reading);
		tables.show(reading);
		tell();
	}

	private void refused(String reason) {
		if (isOpen()) {
			setMessage(null);
			setErrorMessage(Words.sentence(reason));
		}
	}

	private void tell() {
		if (reading == null || running != null) {
			return;
		}
		Optional<String> wrong = wrong();
		setErrorMessage(wrong.orElse(null));
		setMessage(NLS.bind(Messages.IntakeDialog_ready, reading.rows().size()));
		getButton(IDialogConstants.OK_ID).setEnabled(wrong.isEmpty() && !reading.rows().isEmpty());
	}

	private Optional<String> wrong() {
		String name = remember.getText().strip();
		if (!reading.problems().isEmpty()) {
			return Optional.of(NLS.bind(Messages.IntakeDialog_wrong, reading.problems().size(), reading.rows().size()));
		}
		return name.isEmpty() || RememberedMappings.isName(name) ? Optional.empty()
				: Optional.of(NLS.bind(Messages.IntakeDialog_noName, name));
	}

	@Override
	protected void okPressed() {
		if (reading == null || running != null) {
			return;
		}
		getButton(IDialogConstants.OK_ID).setEnabled(false);
		for (Control each : List.of(names, columns, skipKnown, remember)) {
			each.setEnabled(false);
		}
		progress.setVisible(true);
		setMessage(NLS.bind(Messages.IntakeDialog_taking, reading.rows().size()));
		running = IntakeRun.start(reading, remember.getText().strip(), this::worked, this::taken, this::notTaken);
	}

	private void worked(double part) {
		Shell shell = getShell();
		if (shell != null && !shell.isDisposed()) {
			shell.getDisplay().asyncExec(() -> {
				if (isOpen()) {
					progress.setSelection((int) (part * STEPS));
				}
			});
		}
	}

	private void taken(IntakeRun.Taken taken) {
		if (!isOpen()) {
			return;
		}
		List<Entry> jobs = taken.jobs();
		running = null;
		reading = null;
		progress.setVisible(false);
		setErrorMessage(null);
		// another desk may have been quicker with all of them
		setMessage(jobs.isEmpty() ? Messages.IntakeDialog_known : NLS.bind(Messages.IntakeDialog_taken,
				new Object[] { jobs.size(), jobs.get(0).number(), jobs.get(jobs.size() - 1).number() }),
				IMessageProvider.INFORMATION);
		if (!taken.trouble().isEmpty()) {
			setMessage(NLS.bind(Messages.IntakeDialog_notRemembered, taken.trouble()), IMessageProvider.WARNING);
		}
		Button close = getButton(IDialogConstants.CANCEL_ID);
		close.setText(Words.CLOSE);
		getShell().setDefaultButton(close);
		close.setFocus();
	}

	private void notTaken(String reason) {
		if (!isOpen()) {
			return;
		}
		running = null;
		progress.setVisible(false);
		progress.setSelection(0);
		for (Control each : List.of(names, columns, skipKnown, remember)) {
			each.setEnabled(true);
		}
		getButton(IDialogConstants.OK_ID).setEnabled(true);
		setErrorMessage(Words.sentence(reason));
	}

	/** While orders are taken in, they are called off; the window stays and says so. */
	@Override
	protected void cancelPressed() {
		if (running == null) {
			super.cancelPressed();
		} else if (running.cancel()) {
			// it had not begun
			notTaken(Messages.IntakeRun_cancelled);
		}
	}

	@Override
	protected void handleShellCloseEvent() {
		cancelPressed();
	}

	/** What is said to be wrong, a row each: the row of the table, the column and the reason with bars between. */
	public List<String> problems() {
		return tables.said();
	}
}
