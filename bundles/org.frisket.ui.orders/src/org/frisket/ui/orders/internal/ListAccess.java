package org.frisket.ui.orders.internal;

import java.util.Optional;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;

/** Tells assistive technology of the entries of a list which its control only paints. */
public final class ListAccess {

	/** The entries of a list, from 0. */
	public interface Entries {

		int size();

		/** Where the keys start from; -1 for nowhere. */
		int cursor();

		boolean isSelected(int index);

		/** What an entry says; -1 for the list itself. */
		String name(int index);

		/** Where an entry is seen, in pixels of the control; empty if it is not. */
		Optional<Rectangle> boundsOf(int index);
	}

	private final Control control;
	private final Entries entries;

	private ListAccess(Control control, Entries entries) {
		this.control = control;
		this.entries = entries;
	}

	public static ListAccess install(Control control, Entries entries) {
		ListAccess access = new ListAccess(control, entries);
		access.tell();
		return access;
	}

	/** The cursor is elsewhere. */
	public void moved() {
		if (entries.cursor() >= 0) {
			control.getAccessible().setFocus(entries.cursor());
		}
	}

	/** What is said of an entry, or of that under the cursor if it is asked for the list. */
	public String said(int child) {
		int index = child == ACC.CHILDID_SELF ? entries.cursor() : child;
		return entries.name(isThere(index) ? index : -1);
	}

	private boolean isThere(int index) {
		return index >= 0 && index < entries.size();
	}

	private void tell() {
		control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = said(event.childID);
			}
		});
		control.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
			@Override
			public void getChildCount(AccessibleControlEvent event) {
				event.detail = entries.size();
			}

			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_LIST : ACC.ROLE_LISTITEM;
			}

			@Override
			public void getFocus(AccessibleControlEvent event) {
				event.childID = entries.cursor() >= 0 ? entries.cursor() : ACC.CHILDID_SELF;
			}

			@Override
			public void getState(AccessibleControlEvent event) {
				int index = event.childID;
				event.detail = ACC.STATE_FOCUSABLE | ACC.STATE_SELECTABLE
						| (isThere(index) && entries.isSelected(index) ? ACC.STATE_SELECTED : 0)
						| (isThere(index) && index == entries.cursor() ? ACC.STATE_FOCUSED : 0);
			}

			@Override
			public void getLocation(AccessibleControlEvent event) {
				Optional<Rectangle> bounds = isThere(event.childID) ? entries.boundsOf(event.childID)
						: Optional.empty();
				bounds.ifPresent(place -> {
					Point corner = control.toDisplay(place.x, place.y);
					event.x = corner.x;
					event.y = corner.y;
					event.width = place.width;
					event.height = place.height;
				});
			}
		});
	}
}
