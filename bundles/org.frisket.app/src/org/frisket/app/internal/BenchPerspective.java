package org.frisket.app.internal;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.frisket.ui.bench.Bench;

/** The bench: the job takes the whole width; where none is open, a line says how to open one. */
public final class BenchPerspective implements IPerspectiveFactory {

	static final String ID = "org.frisket.app.bench"; //$NON-NLS-1$

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(true);
		layout.setEditorOnboardingText(Messages.BenchPerspective_empty);
		layout.setEditorOnboardingImageUri("platform:/plugin/org.frisket.app/icons/frisket64.svg"); //$NON-NLS-1$
		layout.addEditorOnboardingCommandId(Bench.OPEN_JOB_COMMAND_ID);
		layout.addEditorOnboardingCommandId("org.eclipse.ui.window.showKeyAssist"); //$NON-NLS-1$
	}
}
