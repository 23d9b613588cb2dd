package org.frisket.ui.bench.internal.screen;

import java.text.NumberFormat;
import java.text.ParsePosition;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Monitor;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.geometry.Length;
import org.frisket.ui.LengthText;
import org.frisket.ui.LengthUnit;

/** Has the user measure the screen the dialog stands on, so that true size is true. */
public final class CalibrationDialog extends TitleAreaDialog {

	private static final int MARGIN_PX = 12;
	private static final int LINE_PX = 400;
	/** Characters; more is no length, and would fill the window when it is told that it is none. */
	private static final int LONGEST_LENGTH = 40;
	private static final int FORGET_ID = IDialogConstants.CLIENT_ID;

	private Gauge gauge;
	private Button ruler;
	private Button card;
	private Text read;
	private Label told;

	public CalibrationDialog(Shell parent) {
		super(parent);
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.PRIMARY_MODAL);
		setBlockOnOpen(false);
		setHelpAvailable(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.CalibrationDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(MARGIN_PX, MARGIN_PX).applyTo(area);
		ruler = choice(area, Messages.CalibrationDialog_ruler);
		card = choice(area, Messages.CalibrationDialog_card);
		gauge = new Gauge(area, LINE_PX, this::validate);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, true).applyTo(gauge);
		new Label(area, SWT.NONE).setText(Messages.CalibrationDialog_read);
		read = new Text(area, SWT.BORDER);
		read.setTextLimit(LONGEST_LENGTH);
		read.addListener(SWT.Modify, event -> validate());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(read);
		told = new Label(area, SWT.WRAP);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(told);
		ruler.setSelection(true);
		return area;
	}

	private Button choice(Composite area, String label) {
		Button button = new Button(area, SWT.RADIO);
		button.setText(label);
		button.addListener(SWT.Selection, event -> chosen());
		GridDataFactory.fillDefaults().span(2, 1).applyTo(button);
		return button;
	}

	private void chosen() {
		boolean isCard = card.getSelection();
		gauge.setCard(isCard);
		gauge.setLength(isCard ? (int) Math.round(Calibration.CARD_WIDTH * Screens.of(gauge).pixelsPerMm()) : LINE_PX);
		read.setEnabled(!isCard);
		if (isCard) {
			gauge.setFocus();
		}
		validate();
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		setTitle(Messages.CalibrationDialog_heading);
		setMessage(Messages.CalibrationDialog_message);
		read.setFocus();
		validate();
		return contents;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, FORGET_ID, Messages.CalibrationDialog_forget, false)
				.setEnabled(Screens.measured(screen()).isPresent());
		createButton(parent, IDialogConstants.OK_ID, Messages.CalibrationDialog_keep, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.CalibrationDialog_cancel, false);
	}

	private Monitor screen() {
		return getShell().getMonitor();
	}

	/** What the gauge measures on the glass, in mm; NaN if that cannot be read. */
	private double measured() {
		if (card.getSelection()) {
			return Calibration.CARD_WIDTH;
		}
		String text = read.getText().strip();
		ParsePosition end = new ParsePosition(0);
		Number number = NumberFormat.getNumberInstance().parse(text, end);
		if (number != null && end.getIndex() == text.length()) {
			return LengthUnit.shown().toMillimetres(number.doubleValue());
		}
		try {
			return Length.parsePositive(text.replace(',', '.'));
		} catch (IllegalArgumentException e) {
			return Double.NaN;
		}
	}

	private void validate() {
		Button keep = getButton(IDialogConstants.OK_ID);
		if (keep == null || keep.isDisposed()) {
			return;
		}
		double mm = measured();
		boolean plausible = Calibration.isPlausible(gauge.length() / mm);
		keep.setEnabled(plausible);
		boolean wrong = !plausible && !read.getText().isBlank();
		setErrorMessage(!wrong ? null : Double.isNaN(mm) || mm <= 0
				? NLS.bind(Messages.CalibrationDialog_noLength, read.getText(), LengthText.of(105))
				: NLS.bind(Messages.CalibrationDialog_implausible, LengthText.of(mm)));
		told.setText(plausible ? told(new Calibration(gauge.length() / mm)) : told(Screens.of(gauge)));
		told.requestLayout();
	}

	private static String told(Calibration calibration) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMinimumFractionDigits(2);
		format.setMaximumFractionDigits(2);
		return NLS.bind(Messages.CalibrationDialog_told, format.format(calibration.pixelsPerMm()),
				Math.round(calibration.dotsPerInch()));
	}

	@Override
	protected void buttonPressed(int id) {
		if (id == FORGET_ID) {
			Screens.forget(screen());
			close();
		} else {
			super.buttonPressed(id);
		}
	}

	@Override
	protected void okPressed() {
		Screens.keep(screen(), new Calibration(gauge.length() / measured()));
		super.okPressed();
	}
}
