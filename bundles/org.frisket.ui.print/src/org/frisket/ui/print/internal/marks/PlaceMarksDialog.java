package org.frisket.ui.print.internal.marks;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

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
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.model.MarkKind;
import org.frisket.print.marks.MarkDesign;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.output.MarkChoice;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** Which marks a sheet gets, with a picture of where they would stand and what is to be said of them there. */
final class PlaceMarksDialog extends TitleAreaDialog {

	private static final int MARGIN_PX = 12;
	private static final int SPACE_PX = 4;
	private static final int FIELD_PX = 110;
	private static final int PICTURE_WIDE_PX = 380;
	private static final int PICTURE_HIGH_PX = 300;
	private static final int NOTICES_HIGH_PX = 96;
	private static final List<MarkKind> KINDS = List.of(MarkKind.DISC, MarkKind.CROSS, MarkKind.CORNER, MarkKind.PENNANT);

	private final SheetState state;
	private final String name;
	private MarkChoice choice;
	private Optional<MarkPlan> plan = Optional.empty();
	private Combo kind;
	private Text size;
	private Text weight;
	private Text quiet;
	private Text margin;
	private Combo count;
	private MarksCanvas picture;
	private Notices notices;

	PlaceMarksDialog(Shell parent, SheetState state, String name) {
		super(parent);
		this.state = state;
		this.name = name;
		choice = MarkChoice.of(state.sheet());
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.PRIMARY_MODAL);
		setHelpAvailable(false);
	}

	/** What was chosen; only after it was closed with OK. */
	MarkPlan plan() {
		return plan.orElseThrow();
	}

	/** What the printer leaves bare, mm. */
	double margin() {
		return choice.margin();
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.PlaceMarksDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(MARGIN_PX, MARGIN_PX).spacing(MARGIN_PX, SPACE_PX).applyTo(area);
		Composite form = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(2 * SPACE_PX, 2 * SPACE_PX).applyTo(form);
		GridDataFactory.fillDefaults().applyTo(form);
		kind = combo(form, Messages.PlaceMarksDialog_kind, KINDS.stream().map(PlaceMarksDialog::word).toList());
		kind.select(KINDS.indexOf(choice.design().kind()));
		size = field(form, Messages.PlaceMarksDialog_size, choice.design().size());
		weight = field(form, Messages.PlaceMarksDialog_weight, choice.design().weight());
		quiet = field(form, Messages.PlaceMarksDialog_quiet, choice.design().quiet());
		count = combo(form, Messages.PlaceMarksDialog_count,
				IntStream.rangeClosed(MarkPlan.LEAST_MARKS, MarkPlan.MOST_MARKS).mapToObj(String::valueOf).toList());
		count.select(choice.count() - MarkPlan.LEAST_MARKS);
		margin = field(form, Messages.PlaceMarksDialog_margin, choice.margin());
		picture = new MarksCanvas(area, mark -> { }, () -> MarksPainter.legend(picture.shown()));
		GridDataFactory.fillDefaults().grab(true, true).hint(PICTURE_WIDE_PX, PICTURE_HIGH_PX).applyTo(picture);
		notices = new Notices(area);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(SPACE_PX, NOTICES_HIGH_PX).applyTo(notices);
		return area;
	}

	private Combo combo(Composite form, String label, List<String> items) {
		new Label(form, SWT.NONE).setText(label);
		Combo combo = new Combo(form, SWT.READ_ONLY);
		combo.setItems(items.toArray(String[]::new));
		GridDataFactory.fillDefaults().hint(FIELD_PX, SWT.DEFAULT).applyTo(combo);
		combo.addListener(SWT.Selection, event -> study());
		return combo;
	}

	private Text field(Composite form, String label, double mm) {
		new Label(form, SWT.NONE).setText(label);
		Text text = new Text(form, SWT.BORDER | SWT.SINGLE);
		text.setText(LengthField.text(mm));
		text.setData(label);
		GridDataFactory.fillDefaults().hint(FIELD_PX, SWT.DEFAULT).applyTo(text);
		text.addListener(SWT.Modify, event -> study());
		return text;
	}

	private static String word(MarkKind kind) {
		return switch (kind) {
		case CORNER -> Messages.PlaceMarksDialog_corner;
		case CROSS -> Messages.PlaceMarksDialog_cross;
		case DISC -> Messages.PlaceMarksDialog_disc;
		case PENNANT -> Messages.PlaceMarksDialog_pennant;
		};
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		setTitle(Messages.PlaceMarksDialog_heading);
		setMessage(NLS.bind(Messages.PlaceMarksDialog_message, name));
		study();
		return contents;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.PlaceMarksDialog_place, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.PlaceMarksDialog_cancel, false);
	}

	private void study() {
		Button ok = getButton(IDialogConstants.OK_ID);
		if (ok == null || ok.isDisposed()) {
			return;
		}
		plan = Optional.empty();
		List<RegisterFinding> findings = List.of();
		String problem = null;
		try {
			choice = read();
			MarkPlan proposed = choice.propose(state.sheet(), state.parts());
			plan = Optional.of(proposed);
			findings = MarkChoice.check(proposed, state.parts());
		} catch (IllegalArgumentException | RegisterException e) {
			problem = e.getMessage();
		}
		setErrorMessage(problem);
		ok.setEnabled(plan.isPresent());
		picture.show(MarksPicture.of(state, name, plan, choice.margin(), findings));
		notices.showFindings(findings);
	}

	/** @throws IllegalArgumentException with the reason, for people */
	private MarkChoice read() {
		MarkDesign design = new MarkDesign(KINDS.get(kind.getSelectionIndex()), mm(size), mm(weight), mm(quiet));
		return new MarkChoice(design, count.getSelectionIndex() + MarkPlan.LEAST_MARKS, mm(margin));
	}

	private static double mm(Text field) {
		try {
			return LengthField.AMOUNT.parse(field.getText(), 0);
		} catch (IllegalArgumentException e) {
			throw new IllegalArgumentException(NLS.bind(Messages.PlaceMarksDialog_problem, field.getData(), e.getMessage()), e);
		}
	}
}
