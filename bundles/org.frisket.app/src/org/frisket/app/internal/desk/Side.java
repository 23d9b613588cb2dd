package org.frisket.app.internal.desk;

import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.WorkbenchException;
import org.frisket.ui.orders.Orders;

/** The two sides of a window. */
public enum Side {

	DESK(Orders.DESK_PERSPECTIVE_ID), BENCH(Orders.BENCH_PERSPECTIVE_ID);

	private final String perspective;

	Side(String perspective) {
		this.perspective = perspective;
	}

	public String perspective() {
		return perspective;
	}

	/** Whether a window shows it. */
	public boolean isShown(IWorkbenchWindow window) {
		IWorkbenchPage page = window.getActivePage();
		IPerspectiveDescriptor shown = page == null ? null : page.getPerspective();
		return shown != null && shown.getId().equals(perspective);
	}

	public void show(IWorkbenchWindow window) throws WorkbenchException {
		if (!isShown(window)) {
			PlatformUI.getWorkbench().showPerspective(perspective, window);
		}
	}
}
