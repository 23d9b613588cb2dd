package org.frisket.ui.print.internal.profiles;

import java.io.IOException;
import java.text.NumberFormat;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;

import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.PrinterProfiles;

/** The studio's printers: measured, renamed, taken away. Each change is kept at once, for all desks. */
public final class PrintersPage extends PreferencePage implements IWorkbenchPreferencePage {

	public static final String ID = "org.frisket.ui.print.preferences.printers"; //$NON-NLS-1$

	private static final int LINE_PX = 420;
	private static final int TABLE_PX = 160;
	private static final int DIGITS = 3;

	private Table table;
	private Button rename;
	private Button remove;
	private List<PrinterProfile> printers = List.of();

	public PrintersPage() {
		noDefaultAndApplyButton();
	}

	@Override
	public void init(IWorkbench workbench) {
		// needs nothing of it
	}

	@Override
	protected Control createContents(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(area);
		Label note = new Label(area, SWT.WRAP);
		note.setText(Messages.PrintersPage_note);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(LINE_PX, SWT.DEFAULT).applyTo(note);
		table = new Table(area, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
		table.setHeaderVisible(true);
		for (String name : new String[] { Messages.PrintersPage_printer, Messages.PrintersPage_across,
				Messages.PrintersPage_down, Messages.PrintersPage_skew, Messages.PrintersPage_measured }) {
			new TableColumn(table, SWT.NONE).setText(name);
		}
		table.addListener(SWT.Selection, event -> enable());
		GridDataFactory.fillDefaults().grab(true, true).hint(LINE_PX, TABLE_PX).applyTo(table);
		Composite buttons = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().applyTo(buttons);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.TOP).applyTo(buttons);
		button(buttons, Messages.PrintersPage_measure, this::measure);
		rename = button(buttons, Messages.PrintersPage_rename, this::rename);
		remove = button(buttons, Messages.PrintersPage_remove, this::remove);
		show(List.of());
		read();
		return area;
	}

	private static Button button(Composite parent, String text, Runnable action) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> action.run());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(button);
		return button;
	}

	private void read() {
		StudioPrinters.read(table.getDisplay(), this::show, this::failed);
	}

	private void failed(String words) {
		if (!table.isDisposed()) {
			setErrorMessage(words);
		}
	}

	private void show(List<PrinterProfile> now) {
		if (table.isDisposed()) {
			return;
		}
		setErrorMessage(null);
		printers = now;
		table.removeAll();
		DateTimeFormatter day = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM);
		for (PrinterProfile each : now) {
			new TableItem(table, SWT.NONE).setText(new String[] { each.name(), percent(each.scaleX()), percent(each.scaleY()),
					NLS.bind(Messages.PrintersPage_degrees, number(Math.toDegrees(each.skew()))), day.format(each.measured()) });
		}
		for (TableColumn column : table.getColumns()) {
			column.pack();
		}
		enable();
	}

	private void enable() {
		rename.setEnabled(table.getSelectionIndex() >= 0);
		remove.setEnabled(table.getSelectionIndex() >= 0);
	}

	private void measure() {
		PrinterDialog dialog = new PrinterDialog(getShell(), printers);
		if (dialog.open() == Window.OK) {
			change(each -> each.keep(dialog.profile()));
		}
	}

	private void rename() {
		PrinterProfile chosen = printers.get(table.getSelectionIndex());
		InputDialog dialog = new InputDialog(getShell(), Messages.PrintersPage_renameTitle, Messages.PrintersPage_renameWords,
				chosen.name(), name -> problem(chosen, name));
		if (dialog.open() == Window.OK && !dialog.getValue().strip().equals(chosen.name())) {
			String name = dialog.getValue();
			change(each -> rename(each, chosen.name(), name));
		}
	}

	private String problem(PrinterProfile chosen, String name) {
		try {
			PrinterProfile renamed = chosen.named(name);
			boolean taken = printers.stream().anyMatch(each -> each != chosen && each.name().equalsIgnoreCase(renamed.name()));
			return taken ? NLS.bind(Messages.PrintersPage_taken, renamed.name()) : null;
		} catch (IllegalArgumentException e) {
			return e.getMessage();
		}
	}

	/** Another desk may have given that name to a printer meanwhile. */
	private static void rename(PrinterProfiles printers, String name, String other) throws IOException {
		try {
			printers.rename(name, other);
		} catch (IllegalArgumentException e) {
			throw new IOException(e.getMessage(), e);
		}
	}

	private void remove() {
		PrinterProfile chosen = printers.get(table.getSelectionIndex());
		if (MessageDialog.openQuestion(getShell(), Messages.PrintersPage_removeTitle,
				NLS.bind(Messages.PrintersPage_removeWords, chosen.name()))) {
			change(each -> each.drop(chosen.name()));
		}
	}

	private void change(StudioPrinters.Change change) {
		StudioPrinters.change(table.getDisplay(), change, () -> {
			if (!table.isDisposed()) {
				read();
			}
		}, this::failed);
	}

	private static String percent(double factor) {
		return NLS.bind(Messages.PrintersPage_percent, number(factor * 100));
	}

	private static String number(double value) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMinimumFractionDigits(DIGITS);
		format.setMaximumFractionDigits(DIGITS);
		// a value that rounds to nothing has no sign
		return format.format(Math.abs(value) < 0.5 * Math.pow(10, -DIGITS) ? 0 : value);
	}
}
