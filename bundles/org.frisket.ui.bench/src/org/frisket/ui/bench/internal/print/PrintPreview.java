package org.frisket.ui.bench.internal.print;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.frisket.prepare.layout.PageLayout;
import org.frisket.prepare.layout.PageSetup;
import org.frisket.prepare.layout.Paper;
import org.frisket.ui.bench.internal.looks.BenchLook;

/** Shows a job as it comes onto paper, and prints it. */
public final class PrintPreview extends Dialog {

	/** More would be a slip of the finger. */
	static final int MOST_PAGES = 200;

	private static final int MARGIN_PX = 12;
	private static final Point FIRST_SIZE = new Point(900, 720);
	private static final List<BenchLook> LOOKS = List.of(BenchLook.PREVIEW, BenchLook.OUTLINE, BenchLook.OPERATIONS);

	private final Supplier<PrintedJob> source;
	private final BenchLook firstLook;
	private Combo paper;
	private Combo direction;
	private Combo size;
	private Combo look;
	private PageCanvas canvas;
	private PagePainter painter;
	private Button back;
	private Button on;
	private Label page;
	private Label told;
	private boolean empty;

	/**
	 * @param source    the job as it is seen now
	 * @param firstLook how the bench looks at it
	 */
	public PrintPreview(Shell parent, Supplier<PrintedJob> source, BenchLook firstLook) {
		super(parent);
		this.source = source;
		this.firstLook = LOOKS.contains(firstLook) ? firstLook : BenchLook.OUTLINE;
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.MAX | SWT.PRIMARY_MODAL);
		setBlockOnOpen(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.PrintPreview_title);
	}

	@Override
	protected Point getInitialSize() {
		return FIRST_SIZE;
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).applyTo(area);
		Composite choices = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(8).applyTo(choices);
		paper = choice(choices, Messages.PrintPreview_paper, List.of(Paper.values()), PrintPreview::name);
		direction = choice(choices, Messages.PrintPreview_direction, List.of(false, true),
				lying -> lying ? Messages.PrintPreview_lying : Messages.PrintPreview_upright);
		size = choice(choices, Messages.PrintPreview_size, List.of(false, true),
				fit -> fit ? Messages.PrintPreview_fit : Messages.PrintPreview_trueSize);
		look = choice(choices, Messages.PrintPreview_look, LOOKS, BenchLook::title);
		look.select(LOOKS.indexOf(firstLook));
		canvas = new PageCanvas(area, this::turned);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
		createTurning(area);
		return area;
	}

	private <T> Combo choice(Composite parent, String label, List<T> values, Function<T, String> names) {
		new Label(parent, SWT.NONE).setText(label);
		Combo combo = new Combo(parent, SWT.READ_ONLY);
		values.forEach(value -> combo.add(names.apply(value)));
		combo.select(0);
		combo.addListener(SWT.Selection, event -> refresh());
		return combo;
	}

	private static String name(Paper paper) {
		return paper == Paper.A4 ? Messages.PrintPreview_a4 : Messages.PrintPreview_letter;
	}

	private void createTurning(Composite area) {
		Composite row = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(4).applyTo(row);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		back = turning(row, Messages.PrintPreview_back, -1);
		page = new Label(row, SWT.CENTER);
		on = turning(row, Messages.PrintPreview_on, 1);
		told = new Label(row, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(told);
	}

	private Button turning(Composite row, String label, int pages) {
		Button button = new Button(row, SWT.PUSH);
		button.setText(label);
		button.addListener(SWT.Selection, event -> canvas.turn(pages));
		return button;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.PrintPreview_print, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.PrintPreview_close, false);
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		refresh();
		canvas.setFocus();
		return contents;
	}

	/** The job is seen otherwise now, or is to be printed otherwise. */
	public void refresh() {
		if (canvas == null || canvas.isDisposed()) {
			return;
		}
		PrintedJob job = source.get();
		empty = job.bounds().isEmpty();
		PageSetup setup = new PageSetup(Paper.values()[paper.getSelectionIndex()], direction.getSelectionIndex() == 1,
				size.getSelectionIndex() == 1);
		PageLayout layout = PageLayout.of(job.bounds(), setup);
		BenchLook chosen = LOOKS.get(look.getSelectionIndex());
		painter = new PagePainter(job, layout, chosen, new PageCaption(job, layout, chosen, LocalDate.now()));
		canvas.setPainter(painter);
		boolean tooMany = layout.pages() > MOST_PAGES;
		getButton(IDialogConstants.OK_ID).setEnabled(!empty && !tooMany);
		told.setText(empty ? Messages.PrintPreview_empty
				: tooMany ? NLS.bind(Messages.PrintPreview_tooMany, layout.pages()) : ""); //$NON-NLS-1$
	}

	private void turned() {
		int pages = canvas.pages();
		page.setText(NLS.bind(Messages.PrintPreview_page, canvas.page() + 1, pages));
		back.setEnabled(canvas.page() > 0);
		on.setEnabled(canvas.page() < pages - 1);
		page.requestLayout();
	}

	@Override
	protected void okPressed() {
		PrinterData wanted = new PrinterData();
		wanted.orientation = painter.layout().setup().lying() ? PrinterData.LANDSCAPE : PrinterData.PORTRAIT;
		wanted.scope = PrinterData.ALL_PAGES;
		wanted.startPage = 1;
		wanted.endPage = painter.layout().pages();
		PrintDialog dialog = new PrintDialog(getShell());
		dialog.setPrinterData(wanted);
		PrinterData chosen = dialog.open();
		if (chosen != null) {
			print(chosen);
		}
	}

	/** Prints what is shown, without asking. */
	public void print(PrinterData data) {
		new PrintRun(getShell().getDisplay(), painter, this::tell).start(data);
	}

	private void tell(String text) {
		if (!told.isDisposed()) {
			told.setText(text);
		}
	}
}
