package org.frisket.ui.material.internal.trials;

import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.contexts.IContextActivation;
import org.eclipse.ui.contexts.IContextService;

/** Has figures mean verdicts while cells are looked at, and only then: in a field they are typed. */
final class VerdictKeys {

	private static final String CONTEXT_ID = "org.frisket.ui.material.testSheet.context"; //$NON-NLS-1$
	private final IContextService contexts;
	private IContextActivation active;

	VerdictKeys(IWorkbenchPartSite site) {
		contexts = site.getService(IContextService.class);
	}

	void listen(boolean now) {
		if (now && active == null) {
			active = contexts.activateContext(CONTEXT_ID);
		} else if (!now && active != null) {
			contexts.deactivateContext(active);
			active = null;
		}
	}
}
