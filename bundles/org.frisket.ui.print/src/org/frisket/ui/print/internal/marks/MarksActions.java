package org.frisket.ui.print.internal.marks;

import java.nio.file.Path;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;

import org.eclipse.jface.dialogs.IInputValidator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.frisket.editing.Edit;
import org.frisket.editing.EditGroup;
import org.frisket.editing.sheets.ChangeSheet;
import org.frisket.editing.sheets.SetMarks;
import org.frisket.editing.sheets.SetMeasures;
import org.frisket.geometry.Point;
import org.frisket.model.Sheet;
import org.frisket.print.measure.KeptMeasures;
import org.frisket.print.measure.MeasuredSheet;
import org.frisket.print.measure.ScannedSheet;
import org.frisket.print.output.SheetMarks;
import org.frisket.print.picture.Resolution;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.RegisterException;
import org.frisket.sheets.SheetName;
import org.frisket.ui.print.internal.profiles.PrintersPage;
import org.frisket.ui.print.internal.profiles.StudioPrinters;

/** What can be done with the marks of a sheet; each of it one step of undo. */
final class MarksActions {

	private static final String[] PICTURES = { "*.png;*.jpg;*.jpeg;*.tif;*.tiff;*.bmp;*.gif", "*" }; //$NON-NLS-1$ //$NON-NLS-2$

	private final MarksView view;

	MarksActions(MarksView view) {
		this.view = view;
	}

	private Sheet sheet() {
		return view.state().sheet();
	}

	private Shell shell() {
		return view.getSite().getShell();
	}

	/** One that would change nothing is passed over. */
	private void execute(Edit edit) {
		view.unsay();
		if (edit.canApply()) {
			view.front().edits().execute(edit);
		}
	}

	/** Asks which marks, and puts them in the place of those that are there. */
	void place() {
		SheetState state = view.front(view.state().sheet());
		PlaceMarksDialog dialog = new PlaceMarksDialog(shell(), state, SheetName.of(state.sheet()));
		if (dialog.open() == Window.OK) {
			Edit marks = new SetMarks(state.sheet(), SheetMarks.toModel(dialog.plan()));
			execute(new EditGroup(marks.name(), List.of(ChangeSheet.printMargin(state.sheet(), dialog.margin()), marks)));
		}
	}

	void remove() {
		execute(new SetMarks(sheet(), List.of()));
	}

	/** Where marks were found on the side that is shown; none forgets what was measured there. */
	void measure(List<Optional<Point>> places) {
		execute(new SetMeasures(sheet(), KeptMeasures.with(sheet(), view.state().back(), places)));
	}

	void fit(FitKind kind) {
		execute(ChangeSheet.fit(sheet(), KeptMeasures.toModel(kind)));
	}

	/** @param name null for none */
	void printer(String name) {
		execute(ChangeSheet.printer(sheet(), name));
	}

	Optional<Path> askForScan() {
		if (view.state() == null || view.state().plan().isEmpty()) {
			view.say(Messages.MarksView_noMarksToFind);
			return Optional.empty();
		}
		FileDialog dialog = new FileDialog(shell(), SWT.OPEN);
		dialog.setText(Messages.MarksActions_scan);
		dialog.setFilterExtensions(PICTURES);
		dialog.setFilterNames(new String[] { Messages.MarksActions_pictures, Messages.MarksActions_allFiles });
		return Optional.ofNullable(dialog.open()).map(Path::of);
	}

	/**
	 * Takes what was found in a scan as measured, unless nothing may be cut by it.
	 *
	 * @param stillWanted asked after a question, while which the job may have changed
	 * @return what is said of the scan
	 */
	String take(ScannedSheet scan, BooleanSupplier stillWanted) {
		String name = String.valueOf(scan.file().getFileName());
		if (scan.found().isBlocked()) {
			return NLS.bind(Messages.MarksActions_notTaken, name);
		}
		Optional<Resolution> resolution = scan.resolution().or(() -> ask(scan));
		if (resolution.isEmpty() || !stillWanted.getAsBoolean()) {
			return NLS.bind(Messages.MarksActions_notTaken, name);
		}
		measure(scan.places(resolution.get()));
		return NLS.bind(Messages.MarksActions_taken, new Object[] { name, number(resolution.get().x()), scan.found().count() });
	}

	/** How fine a scan is whose file does not say, or says what the sheet in it does not bear out. */
	private Optional<Resolution> ask(ScannedSheet scan) {
		OptionalDouble seen = scan.dpiOfMarks();
		String proposed = seen.isPresent() ? number(seen.getAsDouble()) : ""; //$NON-NLS-1$
		String words = scan.said().isPresent()
				? NLS.bind(Messages.MarksActions_dpiDoubtful, number(scan.said().get().x()), proposed)
				: NLS.bind(Messages.MarksActions_dpiUnsaid, proposed);
		IInputValidator sound = text -> Resolution.isSound(dpi(text)) ? null
				: NLS.bind(Messages.MarksActions_dpiUnsound, Math.round(Resolution.LEAST), Math.round(Resolution.MOST));
		InputDialog dialog = new InputDialog(shell(), Messages.MarksActions_scan, words, proposed, sound);
		if (dialog.open() != Window.OK) {
			return Optional.empty();
		}
		double dpi = dialog.getValue().equals(proposed) ? seen.orElseThrow() : dpi(dialog.getValue());
		return Optional.of(Resolution.given(dpi));
	}

	/** NaN for what is no number. */
	private static double dpi(String text) {
		ParsePosition end = new ParsePosition(0);
		String typed = text.strip();
		Number number = NumberFormat.getNumberInstance().parse(typed, end);
		return number != null && end.getIndex() == typed.length() ? number.doubleValue() : Double.NaN;
	}

	private static String number(double value) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setGroupingUsed(false);
		format.setMaximumFractionDigits(2);
		return format.format(value);
	}

	/** Keeps scale and skew of the fit as those of a printer. */
	void keepPrinter() {
		MeasuredSheet measured = view.state().measured().orElseThrow();
		try {
			PrinterProfile profile = PrinterProfile.of(Messages.MarksActions_printer, measured.fit().orElseThrow(),
					LocalDate.now());
			String words = NLS.bind(Messages.MarksActions_keepWords, new Object[] { percent(profile.scaleX()),
					percent(profile.scaleY()), number(Math.toDegrees(profile.skew())) });
			InputDialog dialog = new InputDialog(shell(), Messages.MarksActions_keep, words,
					sheet().getPrinter() == null ? "" : sheet().getPrinter(), text -> problem(profile, text)); //$NON-NLS-1$
			if (dialog.open() == Window.OK) {
				StudioPrinters.change(view.page().getDisplay(), printers -> printers.keep(profile.named(dialog.getValue())),
						view::readPrinters, view::say);
			}
		} catch (RegisterException e) {
			view.say(e.getMessage());
		}
	}

	private static String problem(PrinterProfile profile, String name) {
		try {
			profile.named(name);
			return null;
		} catch (IllegalArgumentException e) {
			return e.getMessage();
		}
	}

	private static String percent(double factor) {
		return number(factor * 100);
	}

	void managePrinters() {
		PreferencesUtil.createPreferenceDialogOn(shell(), PrintersPage.ID, null, null).open();
		view.readPrinters();
	}
}
