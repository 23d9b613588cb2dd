package org.frisket.ui.orders.internal.today;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;
import org.frisket.orders.work.DraftMark;
import org.frisket.orders.work.PlannedRun;
import org.frisket.orders.work.RunMark;
import org.frisket.orders.work.RunPiece;
import org.frisket.orders.work.Step;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.orders.internal.Words;

/** Asks what was done of a run; filled in as if all went as planned. */
final class DoneDialog extends Dialog {

	private static final int MARGIN_PX = 12;
	private static final int SPACE_PX = 8;
	private static final int NOTE_PX = 460;
	private static final int MOST = 100_000;
	/** Amounts of stock are typed to a thousandth, as the shelf has them. */
	private static final int DECIMALS = 3;

	private final PlannedRun run;
	private final TodayRead read;
	private final DraftMark draft;
	private final List<Spinner> made = new ArrayList<>();
	private Label problem;

	DoneDialog(Shell parent, PlannedRun run, TodayRead read) {
		super(parent);
		this.run = run;
		this.read = read;
		draft = new DraftMark(run);
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.APPLICATION_MODAL);
	}

	/** What was said. */
	RunMark mark() {
		return draft.mark();
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(NLS.bind(draft.step() == Step.PRINT ? Messages.DoneDialog_printed : Messages.DoneDialog_cut,
				run.number()));
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		GridLayoutFactory.fillDefaults().numColumns(3).margins(MARGIN_PX, MARGIN_PX).spacing(MARGIN_PX, SPACE_PX)
				.applyTo(area);
		read.cautions().stream().findFirst().ifPresent(caution -> note(area, caution));
		pieces(area);
		draft.used().forEach((of, amount) -> {
			String name = NLS.bind(Messages.DoneDialog_used, read.name(of));
			label(area, name);
			Spinner used = spinner(area, amount.movePointRight(DECIMALS).intValue(), MOST * 1000);
			Named.as(name, used);
			used.setDigits(DECIMALS);
			used.setIncrement(1000);
			used.addListener(SWT.Modify, event -> draft.use(of, BigDecimal.valueOf(used.getSelection(), DECIMALS)));
			label(area, ""); //$NON-NLS-1$
		});
		label(area, Messages.DoneDialog_time);
		Text time = text(area);
		Named.as(Messages.DoneDialog_time, time);
		time.setMessage(Messages.DoneDialog_timeHint);
		time.addListener(SWT.Modify, event -> {
			draft.time(time.getText());
			check();
		});
		label(area, Messages.DoneDialog_remark);
		Text remark = text(area);
		Named.as(Messages.DoneDialog_remark, remark);
		remark.addListener(SWT.Modify, event -> draft.remark(remark.getText()));
		Button rest = box(area, Messages.DoneDialog_rest);
		rest.addListener(SWT.Selection, event -> draft.restToCome(rest.getSelection()));
		if (draft.step() == Step.CUT) {
			Button well = box(area, Messages.DoneDialog_well);
			well.addListener(SWT.Selection, event -> draft.wentWell(well.getSelection()));
			Button offcuts = box(area, Messages.DoneDialog_offcuts);
			offcuts.addListener(SWT.Selection, event -> draft.keepOffcuts(offcuts.getSelection()));
		}
		problem = note(area, ""); //$NON-NLS-1$
		return area;
	}

	private void pieces(Composite area) {
		label(area, ""); //$NON-NLS-1$
		label(area, Messages.DoneDialog_made);
		label(area, Messages.DoneDialog_spoiled);
		for (int i = 0; i < draft.pieces().size(); i++) {
			int place = i;
			RunPiece piece = draft.pieces().get(i);
			String name = NLS.bind(Messages.DoneDialog_piece,
					new Object[] { piece.number(), piece.title(), read.name(piece.of()) });
			label(area, name);
			Spinner good = spinner(area, draft.made(i), piece.left(draft.step()));
			Named.as(Messages.DoneDialog_made + ": " + name, good); //$NON-NLS-1$
			made.add(good);
			good.addListener(SWT.Modify, event -> {
				if (good.getSelection() != draft.made(place)) {
					draft.make(place, good.getSelection());
				}
			});
			Spinner bad = spinner(area, 0, MOST);
			Named.as(Messages.DoneDialog_spoiled + ": " + name, bad); //$NON-NLS-1$
			bad.addListener(SWT.Modify, event -> {
				draft.spoil(place, bad.getSelection());
				made.get(place).setSelection(draft.made(place));
			});
		}
	}

	private static Label label(Composite area, String text) {
		Label label = new Label(area, SWT.NONE);
		label.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		return label;
	}

	private static Label note(Composite area, String text) {
		Label note = new Label(area, SWT.WRAP);
		note.setText(text);
		GridDataFactory.fillDefaults().span(3, 1).grab(true, false).hint(NOTE_PX, SWT.DEFAULT).applyTo(note);
		return note;
	}

	private static Spinner spinner(Composite area, int value, int most) {
		Spinner spinner = new Spinner(area, SWT.BORDER);
		spinner.setValues(value, 0, most, 0, 1, 10);
		return spinner;
	}

	private static Text text(Composite area) {
		Text text = new Text(area, SWT.BORDER);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(text);
		return text;
	}

	private static Button box(Composite area, String words) {
		Button box = new Button(area, SWT.CHECK);
		box.setText(words);
		GridDataFactory.fillDefaults().span(3, 1).applyTo(box);
		return box;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.DoneDialog_ok, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Words.CANCEL, false);
	}

	private void check() {
		problem.setText(draft.problem().orElse("")); //$NON-NLS-1$
		getButton(IDialogConstants.OK_ID).setEnabled(draft.problem().isEmpty());
		problem.getParent().layout();
	}
}
