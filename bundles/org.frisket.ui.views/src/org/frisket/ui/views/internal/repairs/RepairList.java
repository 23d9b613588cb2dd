package org.frisket.ui.views.internal.repairs;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnLayoutData;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The list of repairs, one a line; going to a line visits its place. */
final class RepairList {

	private static final int NUMBER_PX = 44;
	private static final int AMOUNT_PX = 96;
	private static final int PLACE_PX = 140;
	private static final int LEAST_PX = 80;
	private static final int WIDE = 3;
	private static final int NARROW = 2;

	private final Table table;
	private List<RepairLine> lines = List.of();

	/**
	 * @param visited told which line was gone to
	 * @param entered told of which line more is wanted
	 */
	RepairList(Composite parent, Consumer<RepairLine> visited, Consumer<RepairLine> entered) {
		TableColumnLayout columns = new TableColumnLayout();
		parent.setLayout(columns);
		table = new Table(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.VIRTUAL | SWT.BORDER);
		table.setHeaderVisible(true);
		column(columns, Messages.RepairList_number, new ColumnPixelData(NUMBER_PX), SWT.RIGHT);
		column(columns, Messages.RepairList_repair, new ColumnWeightData(WIDE, LEAST_PX), SWT.LEFT);
		column(columns, Messages.RepairList_amount, new ColumnPixelData(AMOUNT_PX), SWT.RIGHT);
		column(columns, Messages.RepairList_place, new ColumnPixelData(PLACE_PX), SWT.RIGHT);
		column(columns, Messages.RepairList_step, new ColumnWeightData(WIDE, LEAST_PX), SWT.LEFT);
		column(columns, Messages.RepairList_outline, new ColumnWeightData(NARROW, LEAST_PX), SWT.LEFT);
		table.addListener(SWT.SetData, event -> fill((TableItem) event.item, event.index));
		table.addListener(SWT.Selection, event -> visit(visited));
		table.addListener(SWT.DefaultSelection, event -> visit(entered));
	}

	private void column(TableColumnLayout columns, String title, ColumnLayoutData width, int alignment) {
		TableColumn column = new TableColumn(table, alignment);
		column.setText(title);
		columns.setColumnData(column, width);
	}

	private void fill(TableItem item, int index) {
		// a table that shrinks may still ask for a line that is about to go
		if (index >= 0 && index < lines.size()) {
			item.setText(lines.get(index).cells().toArray(String[]::new));
		}
	}

	private void visit(Consumer<RepairLine> told) {
		RepairLine line = selected();
		if (line != null) {
			told.accept(line);
		}
	}

	/** The line that is gone to; null if none is. */
	RepairLine selected() {
		int index = table.getSelectionIndex();
		return index < 0 || index >= lines.size() ? null : lines.get(index);
	}

	/** Lists other lines; the line that was gone to is kept if it is among them. */
	void show(List<RepairLine> newLines) {
		RepairLine before = selected();
		lines = newLines;
		table.setItemCount(lines.size());
		table.clearAll();
		table.deselectAll();
		if (before != null && lines.contains(before)) {
			table.setSelection(lines.indexOf(before));
		}
	}

	/** Goes on by so many lines, from the last to the first; the line that is come to, or null if there is none. */
	RepairLine step(int by) {
		if (lines.isEmpty()) {
			return null;
		}
		int from = table.getSelectionIndex();
		int to = from < 0 ? (by > 0 ? 0 : lines.size() - 1) : Math.floorMod(from + by, lines.size());
		table.setSelection(to);
		return selected();
	}

	List<RepairLine> lines() {
		return lines;
	}

	Table table() {
		return table;
	}
}
