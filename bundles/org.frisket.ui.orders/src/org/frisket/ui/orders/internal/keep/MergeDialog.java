package org.frisket.ui.orders.internal.keep;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

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
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.frisket.orders.compare.Difference;
import org.frisket.orders.compare.JobComparison;
import org.frisket.orders.compare.Row;
import org.frisket.orders.compare.Side;
import org.frisket.ui.orders.internal.Named;

/**
 * Shows what two desks have done to a job, thing by thing. Where they touch, the user chooses whose state holds; until
 * then it is what is in the order book, which others go by already.
 */
final class MergeDialog extends Dialog {

	/** What is to become of the job. */
	enum Answer {
		MERGE, THEIRS, COPY, NOTHING
	}

	private static final int THEIRS_ID = IDialogConstants.CLIENT_ID + 1;
	private static final int COPY_ID = IDialogConstants.CLIENT_ID + 2;
	private static final int WIDTH_PX = 700;
	private static final int HEIGHT_PX = 260;
	private static final int SPACE_PX = 12;
	private static final int[] COLUMNS_PX = { 160, 200, 200, 130 };
	private static final int HOLDS = 3;

	private final String job;
	private final JobComparison comparison;
	private final List<Row> rows;
	private final Map<String, Side> choices = new HashMap<>();
	private Answer answer = Answer.NOTHING;
	private Table table;
	private MergePictures pictures;
	private Label whole;
	private Button mine;
	private Button theirs;

	/** @param rows of the comparison */
	MergeDialog(Shell parent, String job, JobComparison comparison, List<Row> rows) {
		super(parent);
		this.job = job;
		this.comparison = comparison;
		this.rows = rows;
		rows.stream().filter(Row::touches).forEach(row -> choices.put(row.key(), Side.THEIRS));
	}

	Answer ask() {
		open();
		return answer;
	}

	/** Whose state holds where both have changed the same, by the keys of the rows. */
	Map<String, Side> choices() {
		return Map.copyOf(choices);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(NLS.bind(Messages.MergeDialog_title, job));
	}

	@Override
	protected boolean isResizable() {
		return true;
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		Label intro = new Label(area, SWT.WRAP);
		intro.setText(choices.isEmpty() ? Messages.MergeDialog_apart
				: NLS.bind(Messages.MergeDialog_touching, choices.size()));
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH_PX, SWT.DEFAULT).applyTo(intro);
		Composite both = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACE_PX, 0).applyTo(both);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(both);
		words(both);
		pictures = new MergePictures(both, comparison, rows, row -> {
			table.select(rows.indexOf(row));
			table.showSelection();
			selected();
		});
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.BEGINNING).applyTo(pictures);
		table.select(first());
		selected();
		return area;
	}

	private void words(Composite parent) {
		Composite words = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().applyTo(words);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(words);
		table = new Table(words, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
		table.setHeaderVisible(true);
		Named.as(NLS.bind(Messages.MergeDialog_title, job), table);
		GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH_PX, HEIGHT_PX).applyTo(table);
		String[] titles = { Messages.MergeDialog_what, Messages.MergeDialog_mine, Messages.MergeDialog_theirs,
				Messages.MergeDialog_holds };
		for (int i = 0; i < titles.length; i++) {
			TableColumn column = new TableColumn(table, SWT.NONE);
			column.setText(titles[i]);
			column.setWidth(COLUMNS_PX[i]);
		}
		for (Row row : rows) {
			new TableItem(table, SWT.NONE).setText(new String[] { row.subject(), said(row.mine()), said(row.theirs()),
					holds(row) });
		}
		table.addListener(SWT.Selection, event -> selected());
		whole = new Label(words, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH_PX, SWT.DEFAULT).applyTo(whole);
		Composite choice = new Composite(words, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(choice);
		mine = side(choice, Messages.MergeDialog_mineHolds, Side.MINE);
		theirs = side(choice, Messages.MergeDialog_theirsHolds, Side.THEIRS);
	}

	/** The first that has to be decided. */
	private int first() {
		int first = 0;
		while (first < rows.size() - 1 && !choices.isEmpty() && !rows.get(first).touches()) {
			first++;
		}
		return first;
	}

	private Button side(Composite parent, String text, Side side) {
		Button button = new Button(parent, SWT.RADIO);
		button.setText(text);
		button.addListener(SWT.Selection, event -> {
			Row row = row();
			if (button.getSelection() && row != null && row.touches()) {
				choices.put(row.key(), side);
				table.getItem(table.getSelectionIndex()).setText(HOLDS, holds(row));
			}
		});
		return button;
	}

	private Row row() {
		int index = table.getSelectionIndex();
		return index < 0 ? null : rows.get(index);
	}

	private void selected() {
		Row row = row();
		boolean touches = row != null && row.touches();
		mine.setEnabled(touches);
		theirs.setEnabled(touches);
		mine.setSelection(touches && choices.get(row.key()) == Side.MINE);
		theirs.setSelection(touches && choices.get(row.key()) == Side.THEIRS);
		whole.setText(row == null ? "" : NLS.bind(Messages.MergeDialog_row, //$NON-NLS-1$
				new Object[] { row.subject(), said(row.mine()), said(row.theirs()) }));
		whole.getParent().layout(true, true);
		pictures.select(row);
	}

	private static String said(Difference difference) {
		return switch (difference.kind()) {
		case NONE -> Messages.MergeDialog_asBefore;
		case ADDED -> Messages.MergeDialog_added;
		case REMOVED -> Messages.MergeDialog_removed;
		case CHANGED -> String.join("; ", difference.words()); //$NON-NLS-1$
		};
	}

	private String holds(Row row) {
		if (row.touches()) {
			return choices.get(row.key()) == Side.MINE ? Messages.MergeDialog_choseMine
					: Messages.MergeDialog_choseTheirs;
		}
		return row.mine().isAny() && row.theirs().isAny() ? Messages.MergeDialog_both
				: row.mine().isAny() ? Messages.MergeDialog_mine : Messages.MergeDialog_theirs;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, COPY_ID, Messages.MergeDialog_copy, false);
		createButton(parent, THEIRS_ID, Messages.MergeDialog_take, false);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.MergeDialog_cancel, false);
		createButton(parent, IDialogConstants.OK_ID, Messages.MergeDialog_merge, true);
	}

	@Override
	protected void buttonPressed(int id) {
		answer = switch (id) {
		case IDialogConstants.OK_ID -> Answer.MERGE;
		case THEIRS_ID -> Answer.THEIRS;
		case COPY_ID -> Answer.COPY;
		default -> Answer.NOTHING;
		};
		setReturnCode(id);
		close();
	}
}
