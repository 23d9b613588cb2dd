package org.frisket.ui.orders.internal.exchange;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.frisket.orders.intake.OrderReading;
import org.frisket.orders.intake.TableHead;
import org.frisket.studio.csv.CsvProblem;
import org.frisket.studio.csv.CsvTable;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.orders.internal.Words;

/** The first rows of a table as they stand there, and below them what cannot be read of all. */
final class IntakeTables extends Composite {

	private static final int SPACE_PX = 4;
	private static final int HEIGHT_PX = 120;
	private static final int ROW_PX = 60;
	private static final int CELL_PX = 120;
	private static final int REASON_PX = 640;
	private static final int MOST = 1000;

	private final Label above;
	private final Table rows;
	private final Label below;
	private final Table problems;

	IntakeTables(Composite parent) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, SPACE_PX).applyTo(this);
		above = label();
		rows = table(Messages.IntakeTables_rows);
		below = label();
		problems = table(Messages.IntakeTables_problems);
		column(problems, Messages.IntakeTables_row, ROW_PX);
		column(problems, Messages.IntakeTables_column, CELL_PX);
		column(problems, Messages.IntakeTables_reason, REASON_PX);
	}

	private Label label() {
		Label label = new Label(this, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(label);
		return label;
	}

	private Table table(String name) {
		Table table = new Table(this, SWT.BORDER | SWT.FULL_SELECTION);
		table.setHeaderVisible(true);
		Named.as(name, table);
		GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, HEIGHT_PX).applyTo(table);
		return table;
	}

	private static void column(Table table, String title, int width) {
		TableColumn column = new TableColumn(table, SWT.LEFT);
		column.setText(title);
		column.setWidth(width);
	}

	void show(OrderReading reading) {
		TableHead head = reading.head();
		above.setText(NLS.bind(Messages.IntakeTables_first, Math.min(head.first().size(), head.rows()), head.rows()));
		rows.setRedraw(false);
		rows.removeAll();
		for (TableColumn column : rows.getColumns()) {
			column.dispose();
		}
		column(rows, Messages.IntakeTables_row, ROW_PX);
		head.titles().forEach(title -> column(rows, title, CELL_PX));
		for (CsvTable.Row row : head.first()) {
			TableItem item = new TableItem(rows, SWT.NONE);
			item.setText(0, Long.toString(row.number()));
			for (int i = 0; i < row.cells().size() && i < head.titles().size(); i++) {
				item.setText(i + 1, row.cells().get(i).strip());
			}
		}
		rows.setRedraw(true);
		show(reading.problems(), reading.remarks());
	}

	private void show(List<CsvProblem> wrong, List<String> remarks) {
		below.setText(wrong.isEmpty() && remarks.isEmpty() ? Messages.IntakeTables_nothingWrong
				: NLS.bind(Messages.IntakeTables_wrong, wrong.size(), remarks.size()));
		problems.setRedraw(false);
		problems.removeAll();
		for (CsvProblem problem : wrong.subList(0, Math.min(MOST, wrong.size()))) {
			new TableItem(problems, SWT.NONE).setText(
					new String[] { Long.toString(problem.row()), problem.column(), Words.sentence(problem.message()) });
		}
		for (String remark : remarks.subList(0, Math.min(MOST, remarks.size()))) {
			new TableItem(problems, SWT.NONE).setText(new String[] { "", "", Words.sentence(remark) }); //$NON-NLS-1$ //$NON-NLS-2$
		}
		problems.setRedraw(true);
	}

	/** What is said to be wrong, a row of the table each, for tests. */
	List<String> said() {
		return List.of(problems.getItems()).stream()
				.map(item -> item.getText(0) + '|' + item.getText(1) + '|' + item.getText(2)).toList();
	}
}
