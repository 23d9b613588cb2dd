package org.frisket.ui.print.internal.profiles;

import java.io.IOException;
import java.nio.file.Path;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.model.WholeFile;
import org.frisket.print.measure.PrinterMeasure;
import org.frisket.print.measure.PrinterSheet;
import org.frisket.print.output.measuring.PrinterSheetFile;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;
import org.frisket.ui.LengthText;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** Measures a printer: a sheet with a square is printed, its lengths are typed, and scale and skew follow. */
final class PrinterDialog extends TitleAreaDialog {

	private static final int MARGIN_PX = 12;
	private static final int SPACE_PX = 4;
	private static final int WIDTH_PX = 440;
	private static final int FIELD_PX = 120;
	private static final double A4_WIDTH = 210;
	private static final double A4_HEIGHT = 297;
	private static final double A3_HEIGHT = 420;
	private static final double LETTER_WIDTH = 215.9;
	private static final double LETTER_HEIGHT = 279.4;
	private static final List<PrinterSheet> SHEETS = List.of(new PrinterSheet(A4_WIDTH, A4_HEIGHT),
			new PrinterSheet(A4_HEIGHT, A3_HEIGHT), new PrinterSheet(LETTER_WIDTH, LETTER_HEIGHT));
	private static final List<String> NAMES = List.of("A4", "A3", "Letter"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$

	private final List<PrinterProfile> known;
	private Combo sheet;
	private Text name;
	/** Across, down, falling, rising. */
	private final List<Text> lengths = new ArrayList<>();
	private Label designed;
	private Label told;
	private PrinterProfile profile;

	/** @param known printers, one of which is measured anew where its name is typed */
	PrinterDialog(Shell parent, List<PrinterProfile> known) {
		super(parent);
		this.known = known;
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.PRIMARY_MODAL);
		setHelpAvailable(false);
	}

	/** What was measured; only after it was closed with OK. */
	PrinterProfile profile() {
		return profile;
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.PrinterDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.fillDefaults().numColumns(3).margins(MARGIN_PX, MARGIN_PX).spacing(2 * SPACE_PX, 2 * SPACE_PX)
				.applyTo(area);
		new Label(area, SWT.NONE).setText(Messages.PrinterDialog_sheet);
		sheet = new Combo(area, SWT.READ_ONLY);
		sheet.setItems(NAMES.toArray(String[]::new));
		sheet.select(0);
		sheet.addListener(SWT.Selection, event -> study());
		GridDataFactory.fillDefaults().hint(FIELD_PX, SWT.DEFAULT).applyTo(sheet);
		Button write = new Button(area, SWT.PUSH);
		write.setText(Messages.PrinterDialog_write);
		write.addListener(SWT.Selection, event -> write());
		designed = words(area);
		for (String label : new String[] { Messages.PrinterDialog_across, Messages.PrinterDialog_down,
				Messages.PrinterDialog_falling, Messages.PrinterDialog_rising }) {
			lengths.add(field(area, label));
		}
		name = field(area, Messages.PrinterDialog_name);
		told = words(area);
		return area;
	}

	private Text field(Composite area, String label) {
		new Label(area, SWT.NONE).setText(label);
		Text text = new Text(area, SWT.BORDER | SWT.SINGLE);
		text.setData(label);
		text.addListener(SWT.Modify, event -> study());
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(FIELD_PX, SWT.DEFAULT).applyTo(text);
		return text;
	}

	private static Label words(Composite area) {
		Label words = new Label(area, SWT.WRAP);
		GridDataFactory.fillDefaults().span(3, 1).grab(true, false).hint(WIDTH_PX, SWT.DEFAULT).applyTo(words);
		return words;
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		setTitle(Messages.PrinterDialog_heading);
		setMessage(Messages.PrinterDialog_message);
		study();
		return contents;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.PrinterDialog_keep, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.PrinterDialog_cancel, false);
	}

	private PrinterSheet chosen() {
		return SHEETS.get(sheet.getSelectionIndex());
	}

	private void study() {
		Button keep = getButton(IDialogConstants.OK_ID);
		if (keep == null || keep.isDisposed()) {
			return;
		}
		double side = chosen().side();
		designed.setText(NLS.bind(Messages.PrinterDialog_designed, LengthText.of(side), LengthText.of(side * Math.sqrt(2))));
		profile = null;
		String problem = null;
		String words = ""; //$NON-NLS-1$
		if (lengths.stream().noneMatch(field -> field.getText().isBlank())) {
			try {
				PrinterMeasure measure = new PrinterMeasure(side, mm(0), mm(1), mm(2), mm(3));
				// a name is asked for last; until then another says what comes out
				String called = name.getText().isBlank() ? "-" : name.getText(); //$NON-NLS-1$
				PrinterProfile made = measure.profile(called, LocalDate.now());
				words = words(made, measure.findings());
				profile = name.getText().isBlank() ? null : made;
			} catch (IllegalArgumentException | RegisterException e) {
				problem = e.getMessage();
			}
		}
		setErrorMessage(problem);
		if (!words.equals(told.getText())) {
			told.setText(words);
			told.requestLayout();
		}
		keep.setEnabled(profile != null);
	}

	private double mm(int index) {
		try {
			return LengthField.SIZE.parse(lengths.get(index).getText(), 0);
		} catch (IllegalArgumentException e) {
			throw new IllegalArgumentException(
					NLS.bind(Messages.PrinterDialog_problem, lengths.get(index).getData(), e.getMessage()), e);
		}
	}

	private String words(PrinterProfile made, List<RegisterFinding> findings) {
		StringBuilder words = new StringBuilder(NLS.bind(Messages.PrinterDialog_told, new Object[] { number(made.scaleX() * 100),
				number(made.scaleY() * 100), number(Math.toDegrees(made.skew())) }));
		findings.forEach(finding -> words.append('\n').append(Messages.PrinterDialog_disagree));
		if (known.stream().anyMatch(each -> each.name().equalsIgnoreCase(made.name()))) {
			words.append('\n').append(NLS.bind(Messages.PrinterDialog_anew, made.name()));
		}
		return words.toString().replace("&", "&&"); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static String number(double value) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMaximumFractionDigits(3);
		return format.format(Math.abs(value) < 0.0005 ? 0 : value);
	}

	private void write() {
		FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
		dialog.setText(Messages.PrinterDialog_writeTitle);
		dialog.setFilterExtensions(new String[] { "*.pdf" }); //$NON-NLS-1$
		dialog.setFileName(Messages.PrinterDialog_fileName);
		dialog.setOverwrite(true);
		String target = dialog.open();
		if (target != null) {
			Path file = Path.of(target.endsWith(".pdf") ? target : target + ".pdf"); //$NON-NLS-1$ //$NON-NLS-2$
			try {
				PrinterSheet printed = chosen();
				WholeFile.write(out -> PrinterSheetFile.write(printed, out), file);
				setMessage(NLS.bind(Messages.PrinterDialog_written, file.getFileName()));
			} catch (IOException e) {
				setErrorMessage(NLS.bind(Messages.PrinterDialog_notWritten, file, WholeFile.reason(e)));
			}
		}
	}
}
