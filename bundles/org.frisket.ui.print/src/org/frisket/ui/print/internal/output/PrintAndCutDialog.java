package org.frisket.ui.print.internal.output;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.print.output.PrintAndCut;

/**
 * Asks how sheets are printed and cut, and shows what comes of it: the picture of both files, what is wrong, and
 * what will be written. From here files are written, or a sheet goes straight to a printer. Nothing is written
 * while anything blocks.
 */
public final class PrintAndCutDialog extends TitleAreaDialog implements ReadPrints.Client {

	private static final int PRINT_ID = IDialogConstants.CLIENT_ID + 1;
	private static final int MARGIN_PX = 12;
	private static final int SPACING_PX = 8;
	private static final int FINDINGS_PX = 70;

	/** What is done when the form is filled in. */
	public interface Actions {

		void write(WriteRun.Request request);

		void print(PaperRun.Request request);
	}

	private final org.frisket.model.Job job;
	private final Path suggested;
	private final int first;
	private final boolean toPaper;
	private final Actions actions;
	private final ReadPrints reader;
	private PrintForm form;
	private FaceView face;
	private Text findings;
	/** What the newest request came to. */
	private Outcome outcome = Outcome.PENDING;

	/**
	 * @param job       a copy that nobody changes any more
	 * @param file      where the job is; null if it is in none
	 * @param suggested folder for the files, unless the studio remembers one
	 * @param first     number of the sheet that is chosen already; 0 for all
	 * @param toPaper   whether it is asked for to print straight onto paper
	 */
	public PrintAndCutDialog(Shell parent, org.frisket.model.Job job, Path file, Path suggested, int first, boolean toPaper,
			Actions actions) {
		super(parent);
		this.job = job;
		this.suggested = suggested;
		this.first = first;
		this.toPaper = toPaper;
		this.actions = actions;
		reader = new ReadPrints(parent.getDisplay(), job, file, this);
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.MAX | SWT.PRIMARY_MODAL);
		setBlockOnOpen(false);
		setHelpAvailable(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(toPaper ? Messages.PrintAndCutDialog_paperTitle : Messages.PrintAndCutDialog_title);
		shell.addListener(SWT.Dispose, event -> reader.request(null));
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(MARGIN_PX, MARGIN_PX).spacing(2 * SPACING_PX, SPACING_PX)
				.applyTo(area);
		form = new PrintForm(area, job, suggested, first, this::changed, this::validate);
		face = new FaceView(area, first, this::changed);
		findings = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
		findings.setData("findings"); //$NON-NLS-1$
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(PrintForm.WIDTH_PX, FINDINGS_PX).applyTo(findings);
		Label caution = new Label(area, SWT.WRAP);
		caution.setText(Messages.PrintAndCutDialog_caution);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(PrintForm.WIDTH_PX, SWT.DEFAULT).applyTo(caution);
		form.measure();
		StudioPrinting.look(getShell().getDisplay(), this::use);
		return area;
	}

	private void use(StudioPrinting known) {
		if (getShell() != null && !getShell().isDisposed()) {
			form.use(known);
		}
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, PRINT_ID, Messages.PrintAndCutDialog_print, toPaper);
		createButton(parent, IDialogConstants.OK_ID, Messages.PrintAndCutDialog_write, !toPaper);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.PrintAndCutDialog_close, false);
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		setTitle(toPaper ? Messages.PrintAndCutDialog_paperHeading : Messages.PrintAndCutDialog_heading);
		validate();
		// the button that the dialog begins with cannot be pressed yet, and keys would go nowhere
		form.focus();
		return contents;
	}

	/** Other sheets are wanted, or the same otherwise. */
	private void changed() {
		if (face == null) {
			return;
		}
		outcome = Outcome.PENDING;
		try {
			reader.request(form.request(face));
		} catch (IllegalArgumentException e) {
			// told by validate; the last picture stays
			reader.request(null);
		}
		validate();
	}

	@Override
	public void face(Face seen) {
		face.show(seen);
	}

	@Override
	public void sheets(ReadPrints.Request request, List<PrintAndCut> read, List<String> problems) {
		outcome = new Outcome(read, null);
		findings.setText(FindingWords.of(read, problems));
		validate();
	}

	@Override
	public void failed(String message) {
		outcome = new Outcome(null, message);
		face.hide(message);
		validate();
	}

	/** Whether what is shown is that of the form as it is now. */
	public boolean isSettled() {
		return outcome.isThere();
	}

	private void validate() {
		Button write = getButton(IDialogConstants.OK_ID);
		if (write == null || write.isDisposed()) {
			return;
		}
		String stop = trouble();
		String wrong = stop;
		List<Path> targets = List.of();
		if (stop == null && outcome.isThere()) {
			try {
				targets = form.set(outcome).targets();
			} catch (IllegalArgumentException e) {
				wrong = e.getMessage();
			}
		}
		boolean valid = form.tell(targets);
		setErrorMessage(wrong);
		long replaced = targets.stream().filter(Files::exists).count();
		String usual = toPaper ? Messages.PrintAndCutDialog_paperMessage : Messages.PrintAndCutDialog_message;
		setMessage(!outcome.isThere() && wrong == null ? Messages.PrintAndCutDialog_working
				: replaced > 0 ? NLS.bind(Messages.PrintAndCutDialog_replaces, replaced) : usual,
				replaced > 0 ? IMessageProvider.WARNING : IMessageProvider.NONE);
		write.setEnabled(wrong == null && valid && !targets.isEmpty());
		getButton(PRINT_ID).setEnabled(stop == null && printed().isPresent());
		write.setText(replaced > 0 ? Messages.PrintAndCutDialog_replace : Messages.PrintAndCutDialog_write);
		setButtonLayoutData(write);
		write.requestLayout();
	}

	/** What keeps anything from being made, in a sentence; null if nothing does. */
	private String trouble() {
		try {
			form.check();
		} catch (IllegalArgumentException e) {
			return e.getMessage();
		}
		return outcome.trouble();
	}

	/** The sheet that is shown, if anything on it is printed. */
	private Optional<PrintAndCut> printed() {
		return outcome.printed(face.shown());
	}

	@Override
	protected void buttonPressed(int id) {
		if (id == PRINT_ID) {
			PrinterData chosen = PaperRun.ask(getShell(), printed().orElseThrow());
			if (chosen != null) {
				print(chosen);
			}
		} else {
			super.buttonPressed(id);
		}
	}

	/** Prints the sheet that is shown. */
	public void print(PrinterData data) {
		PaperRun.Request request = new PaperRun.Request(data, printed().orElseThrow(), title());
		if (PaperRun.mayPrint(getShell(), request)) {
			form.remember();
			close();
			actions.print(request);
		}
	}

	private String title() {
		String title = job.getTitle() == null ? "" : job.getTitle(); //$NON-NLS-1$
		return NLS.bind(Messages.PrintAndCutDialog_jobTitle, title.lines().findFirst().orElse(""), face.shown()); //$NON-NLS-1$
	}

	@Override
	protected void okPressed() {
		WriteRun.Request request = form.writing(outcome);
		form.remember();
		super.okPressed();
		actions.write(request);
	}
}
