package org.frisket.app.internal;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.frisket.app.internal.help.HelpView;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.material.Material;
import org.frisket.ui.views.Views;

/** The bench with its views around it; where no job is open, a line says how to open one. */
public final class BenchPerspective implements IPerspectiveFactory {

	static final String ID = "org.frisket.app.bench"; //$NON-NLS-1$

	/** What makeready below leaves to the rest. */
	private static final float BENCH_HEIGHT = 0.78f;
	private static final float STACK_WIDTH = 0.2f;
	/** What the type case below leaves to the stack. */
	private static final float STACK_HEIGHT = 0.45f;
	private static final float PROPERTIES_START = 0.74f;
	private static final String RIGHT = "org.frisket.app.bench.right"; //$NON-NLS-1$

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(true);
		layout.addView(Views.MAKEREADY_ID, IPageLayout.BOTTOM, BENCH_HEIGHT, layout.getEditorArea());
		layout.addView(Views.STACK_ID, IPageLayout.LEFT, STACK_WIDTH, layout.getEditorArea());
		layout.addView(Views.TYPE_CASE_ID, IPageLayout.BOTTOM, STACK_HEIGHT, Views.STACK_ID);
		IFolderLayout right = layout.createFolder(RIGHT, IPageLayout.RIGHT, PROPERTIES_START, layout.getEditorArea());
		right.addView(Views.PROPERTIES_ID);
		// behind the properties: on a small screen neither would have room enough below the other
		right.addView(Material.SHELF_ID);
		right.addPlaceholder(HelpView.ID);
		layout.setEditorOnboardingText(Messages.BenchPerspective_empty);
		layout.setEditorOnboardingImageUri("platform:/plugin/org.frisket.app/icons/frisket64.svg"); //$NON-NLS-1$
		layout.addEditorOnboardingCommandId(Bench.NEW_JOB_COMMAND_ID);
		layout.addEditorOnboardingCommandId(Bench.OPEN_JOB_COMMAND_ID);
		layout.addEditorOnboardingCommandId("org.frisket.app.command.tour"); //$NON-NLS-1$
		layout.addEditorOnboardingCommandId("org.eclipse.ui.window.showKeyAssist"); //$NON-NLS-1$
	}
}
