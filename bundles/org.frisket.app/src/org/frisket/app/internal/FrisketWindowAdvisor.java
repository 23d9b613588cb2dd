package org.frisket.app.internal;

import org.eclipse.e4.ui.model.application.ui.advanced.MPerspective;
import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.e4.ui.workbench.UIEvents;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.frisket.app.internal.desk.RoomForEditors;

/** The window: menu, tool bar, status line, and a title that names the job in front. */
final class FrisketWindowAdvisor extends WorkbenchWindowAdvisor {

	private static final Point FIRST_SIZE = new Point(1280, 850);

	FrisketWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		super(configurer);
	}

	@Override
	public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
		// menus and tool bars are contributed, so that later bundles add theirs the same way
		return new ActionBarAdvisor(configurer);
	}

	@Override
	public void preWindowOpen() {
		IWorkbenchWindowConfigurer window = getWindowConfigurer();
		window.setInitialSize(FIRST_SIZE);
		window.setShowMenuBar(true);
		window.setShowCoolBar(true);
		window.setShowStatusLine(true);
		window.setShowPerspectiveBar(false);
		window.setShowProgressIndicator(false);
		window.setTitle(Messages.FrisketWindowAdvisor_product);
	}

	@Override
	public void postWindowCreate() {
		getWindowConfigurer().getWindow().getPartService().addPartListener(new IPartListener2() {

			@Override
			public void partActivated(IWorkbenchPartReference part) {
				updateTitle();
			}

			@Override
			public void partClosed(IWorkbenchPartReference part) {
				updateTitle();
			}

			@Override
			public void partInputChanged(IWorkbenchPartReference part) {
				updateTitle();
			}
		});
		getWindowConfigurer().getWindow().getPartService()
				.addPartListener(new RoomForEditors(getWindowConfigurer().getWindow()));
		updateTitle();
	}

	@Override
	public void postWindowOpen() {
		// the renderer of the editor area learns what to say on an empty one only from this event, which nobody
		// sends for the perspective that a window opens with
		IWorkbenchWindow window = getWindowConfigurer().getWindow();
		MPerspective perspective = window.getService(EModelService.class)
				.getActivePerspective(window.getService(MWindow.class));
		if (perspective != null) {
			UIEvents.publishEvent(UIEvents.UILifeCycle.PERSPECTIVE_SWITCHED, perspective);
		}
	}

	private void updateTitle() {
		IWorkbenchWindowConfigurer window = getWindowConfigurer();
		IEditorPart editor = window.getWindow().getActivePage() == null ? null
				: window.getWindow().getActivePage().getActiveEditor();
		window.setTitle(editor == null ? Messages.FrisketWindowAdvisor_product
				: NLS.bind(Messages.FrisketWindowAdvisor_title, editor.getTitle()));
	}
}
