package org.frisket.app.internal.tour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.frisket.ui.bench.Bench;

/** Where the things of a window are that the tour tells of, in pixels of its client area. */
final class Places {

	private Places() {
	}

	/** Where a part is; empty while it is not seen. */
	static Optional<Rectangle> of(IWorkbenchPart part) {
		Object widget = part == null ? null : part.getSite().getService(MPart.class).getWidget();
		return widget instanceof Control control && !control.isDisposed() && control.isVisible()
				? Optional.of(in(control.getShell(), control, control.getParent().toDisplay(control.getLocation()).x,
						control.getParent().toDisplay(control.getLocation()).y))
				: Optional.empty();
	}

	private static Rectangle in(Shell window, Control control, int displayX, int displayY) {
		org.eclipse.swt.graphics.Point place = window.toControl(displayX, displayY);
		return new Rectangle(place.x, place.y, control.getSize().x, control.getSize().y);
	}

	/** Where the button for export is; empty if it was taken off the tool bar. */
	static Optional<Rectangle> ofExport(IWorkbenchWindow window) {
		List<ToolItem> items = new ArrayList<>();
		collect(window.getShell(), items);
		return items.stream().filter(Places::isExport).findFirst().map(item -> {
			Rectangle box = item.getBounds();
			org.eclipse.swt.graphics.Point place = window.getShell().toControl(item.getParent().toDisplay(box.x, box.y));
			return new Rectangle(place.x, place.y, box.width, box.height);
		});
	}

	private static boolean isExport(ToolItem item) {
		return item.getData() instanceof IContributionItem contribution && contribution.getId() != null
				&& contribution.getId().contains(Bench.EXPORT_COMMAND_ID);
	}

	private static void collect(Composite parent, List<ToolItem> into) {
		for (Control child : parent.getChildren()) {
			if (child instanceof ToolBar bar && bar.isVisible()) {
				into.addAll(List.of(bar.getItems()));
			} else if (child instanceof Composite composite) {
				collect(composite, into);
			}
		}
	}
}
