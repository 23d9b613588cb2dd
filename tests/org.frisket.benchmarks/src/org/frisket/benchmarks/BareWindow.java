package org.frisket.benchmarks;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** The least window the platform can show: the peer of our workbench's cold start. */
public final class BareWindow implements IApplication {

	/** A perspective with nothing in it. */
	public static final class Empty implements IPerspectiveFactory {
		@Override
		public void createInitialLayout(IPageLayout layout) {
			// nothing
		}
	}

	@Override
	public Object start(IApplicationContext context) {
		Display display = PlatformUI.createDisplay();
		try {
			PlatformUI.createAndRunWorkbench(display, new WorkbenchAdvisor() {
				@Override
				public String getInitialWindowPerspectiveId() {
					return "org.frisket.benchmarks.empty";
				}

				@Override
				public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
					configurer.setTitle("Bare window");
					return super.createWorkbenchWindowAdvisor(configurer);
				}
			});
			return IApplication.EXIT_OK;
		} finally {
			display.dispose();
		}
	}

	@Override
	public void stop() {
		// ended from outside
	}
}
