package org.frisket.ui.sheets.internal.sheets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.contexts.IContextActivation;
import org.eclipse.ui.contexts.IContextService;

/** Keys that mean something else while text is typed: they hold while the surface itself has the focus. */
final class SurfaceKeys {

	private static final String CONTEXT_ID = "org.frisket.ui.sheets.sheets.context"; //$NON-NLS-1$

	private final IContextService contexts;
	private IContextActivation active;

	/** @param escape what Escape does there */
	SurfaceKeys(IWorkbenchPartSite site, Control surface, Runnable escape) {
		contexts = site.getService(IContextService.class);
		surface.addListener(SWT.FocusIn, event -> activate());
		surface.addListener(SWT.FocusOut, event -> deactivate());
		surface.addListener(SWT.KeyDown, event -> {
			if (event.keyCode == SWT.ESC) {
				escape.run();
			}
		});
	}

	private void activate() {
		if (active == null) {
			active = contexts.activateContext(CONTEXT_ID);
		}
	}

	private void deactivate() {
		if (active != null) {
			contexts.deactivateContext(active);
			active = null;
		}
	}
}
