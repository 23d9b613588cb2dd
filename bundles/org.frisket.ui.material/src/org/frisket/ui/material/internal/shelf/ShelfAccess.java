package org.frisket.ui.material.internal.shelf;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/** Tells assistive technology of the rows that are only painted. */
final class ShelfAccess {

	private ShelfAccess() {
	}

	private static boolean isRow(ShelfCanvas canvas, int child) {
		return child >= 0 && child < canvas.stocks().size();
	}

	static void install(ShelfCanvas canvas) {
		canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = isRow(canvas, event.childID) ? StockText.spoken(canvas.stocks().get(event.childID))
						: canvas.selection().map(StockText::spoken).orElse(Messages.ShelfCanvas_name);
			}
		});
		canvas.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
			@Override
			public void getChildCount(AccessibleControlEvent event) {
				event.detail = canvas.stocks().size();
			}

			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_LIST : ACC.ROLE_LISTITEM;
			}

			@Override
			public void getFocus(AccessibleControlEvent event) {
				event.childID = canvas.selectedIndex() >= 0 ? canvas.selectedIndex() : ACC.CHILDID_SELF;
			}

			@Override
			public void getState(AccessibleControlEvent event) {
				boolean current = isRow(canvas, event.childID) && event.childID == canvas.selectedIndex();
				event.detail = ACC.STATE_FOCUSABLE | ACC.STATE_SELECTABLE
						| (current ? ACC.STATE_FOCUSED | ACC.STATE_SELECTED : 0);
			}

			@Override
			public void getLocation(AccessibleControlEvent event) {
				if (isRow(canvas, event.childID)) {
					Rectangle place = canvas.boundsOf(event.childID);
					Point corner = canvas.toDisplay(place.x, place.y);
					event.x = corner.x;
					event.y = corner.y;
					event.width = place.width;
					event.height = place.height;
				}
			}
		});
	}
}
