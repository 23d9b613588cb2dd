package org.frisket.ui.orders.internal.book;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;

/** Tells assistive technology of the rows, which the table only paints. */
final class BookAccess {

	private BookAccess() {
	}

	/** What a line says; that of the cursor for the table itself. */
	static String name(BookGrid grid, int child) {
		int row = child == ACC.CHILDID_SELF ? grid.cursorRow() : child;
		if (row < 0 || row >= grid.lines().size()) {
			return Messages.BookAccess_name;
		}
		return grid.lines().job(row).map(job -> grid.text().spoken(job, grid.today()))
				.orElseGet(() -> grid.text().heading(grid.lines().group(row).orElseThrow()));
	}

	static void selected(BookGrid grid) {
		if (grid.cursorRow() >= 0) {
			grid.table().getAccessible().setFocus(grid.cursorRow());
		}
	}

	static void install(BookGrid grid) {
		grid.table().getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = name(grid, event.childID);
			}
		});
		grid.table().getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
			@Override
			public void getChildCount(AccessibleControlEvent event) {
				event.detail = grid.lines().size();
			}

			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_LIST : ACC.ROLE_LISTITEM;
			}

			@Override
			public void getFocus(AccessibleControlEvent event) {
				event.childID = grid.cursorRow() >= 0 ? grid.cursorRow() : ACC.CHILDID_SELF;
			}

			@Override
			public void getState(AccessibleControlEvent event) {
				int row = event.childID;
				boolean known = row >= 0 && row < grid.lines().size();
				event.detail = ACC.STATE_FOCUSABLE | ACC.STATE_SELECTABLE
						| (known && grid.isSelected(row) ? ACC.STATE_SELECTED : 0)
						| (known && row == grid.cursorRow() ? ACC.STATE_FOCUSED : 0);
			}

			@Override
			public void getLocation(AccessibleControlEvent event) {
				grid.boundsOf(event.childID).ifPresent(place -> {
					Point corner = grid.table().toDisplay(place.x, place.y);
					event.x = corner.x;
					event.y = corner.y;
					event.width = place.width;
					event.height = place.height;
				});
			}
		});
	}
}
