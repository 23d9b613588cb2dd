package org.frisket.ui.views.internal.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.frisket.ui.views.internal.ElementText;

/**
 * All that the painting of the stack goes by, but for what is selected and pointed at.
 *
 * @param threads  those of the mats
 * @param brackets those of the groups
 * @param current  null for none
 */
record StackSight(List<RowSight> rows, List<?> threads, List<?> brackets, Row current) {

	/** A row as it is painted; {@code words} are those that stand in it. */
	private record RowSight(Row row, RowState state, String words, Object sheet, List<Boolean> flags) {

		static RowSight of(Row row, RowState state) {
			return new RowSight(row, state,
					row.isLayer() ? row.layer().getName() + '\n' + row.layer().getStock() : ElementText.of(row.element()),
					row.layer().getColour(),
					List.of(row.isVisible(), row.isLocked(), row.layer().isVisible(), row.layer().isLocked()));
		}
	}

	static StackSight of(StackRows rows, MatThreads threads, GroupBrackets brackets, Row current) {
		return new StackSight(rows.list().stream().map(row -> RowSight.of(row, rows.state(row))).toList(),
				List.copyOf(threads.list()), List.copyOf(brackets.list()), current);
	}

	/** Whether all but what is said in single rows is as before. */
	boolean hasSameFrame(StackSight before) {
		return before != null && rows.size() == before.rows.size() && threads.equals(before.threads)
				&& brackets.equals(before.brackets) && Objects.equals(current, before.current);
	}

	/** Numbers of the rows that are others than before. */
	List<Integer> rowsUnlike(StackSight before) {
		List<Integer> changed = new ArrayList<>();
		for (int i = 0; i < rows.size(); i++) {
			if (!rows.get(i).equals(before.rows.get(i))) {
				changed.add(i);
			}
		}
		return changed;
	}
}
