package org.frisket.ui.views.internal.stack;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.model.Jobs;
import org.frisket.ui.OperationName;
import org.frisket.ui.views.internal.ElementText;

/** Tells assistive technology of the rows that are only painted: a list of layers and elements. */
final class StackAccess {

	private StackAccess() {
	}

	static void install(StackCanvas canvas) {
		canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = event.childID >= 0 && event.childID < canvas.rows().size()
						? text(canvas, canvas.rows().get(event.childID))
						: Messages.StackCanvas_name;
			}
		});
		canvas.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
			@Override
			public void getChildCount(AccessibleControlEvent event) {
				event.detail = canvas.rows().size();
			}

			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_LIST : ACC.ROLE_LISTITEM;
			}

			@Override
			public void getFocus(AccessibleControlEvent event) {
				int index = canvas.rows().indexOf(canvas.current());
				event.childID = index >= 0 ? index : ACC.CHILDID_SELF;
			}

			@Override
			public void getState(AccessibleControlEvent event) {
				boolean isRow = event.childID >= 0 && event.childID < canvas.rows().size();
				Row row = isRow ? canvas.rows().get(event.childID) : null;
				boolean current = isRow && row.equals(canvas.current());
				boolean selected = isRow && (current || canvas.bench().selection().contains(row.element()));
				event.detail = ACC.STATE_FOCUSABLE | ACC.STATE_SELECTABLE | ACC.STATE_MULTISELECTABLE
						| (current ? ACC.STATE_FOCUSED : 0) | (selected ? ACC.STATE_SELECTED : 0);
			}

			@Override
			public void getLocation(AccessibleControlEvent event) {
				if (event.childID >= 0 && event.childID < canvas.rows().size()) {
					Rectangle place = canvas.boundsOf(canvas.rows().get(event.childID));
					Point corner = canvas.toDisplay(place.x, place.y);
					event.x = corner.x;
					event.y = corner.y;
					event.width = place.width;
					event.height = place.height;
				}
			}
		});
	}

	static void moved(StackCanvas canvas) {
		int index = canvas.rows().indexOf(canvas.current());
		if (index >= 0) {
			canvas.getAccessible().setFocus(index);
		}
	}

	private static String text(StackCanvas canvas, Row row) {
		RowState state = canvas.state(row);
		String name = row.isLayer() ? String.valueOf(row.layer().getName()) : ElementText.of(row.element());
		if (!row.isVisible()) {
			name = NLS.bind(Messages.StackCanvas_hidden, name);
		}
		if (row.isLocked()) {
			name = NLS.bind(Messages.StackCanvas_locked, name);
		}
		if (!row.isLayer() && Jobs.groupOf(row.element()).isPresent()) {
			name = NLS.bind(Messages.StackAccess_grouped, name);
		}
		if (!state.operations().isEmpty()) {
			name = NLS.bind(Messages.StackAccess_listed, name, OperationName.of(state.operations()));
		}
		name = NLS.bind(Messages.StackAccess_listed, name, StackPainter.pieces(state));
		return state.findings().isEmpty() ? name
				: NLS.bind(Messages.StackAccess_findings, name, state.findings().size());
	}
}
