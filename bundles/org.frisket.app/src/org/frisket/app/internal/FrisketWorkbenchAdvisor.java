package org.frisket.app.internal;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.statushandlers.StatusManager;
import org.frisket.app.internal.tour.TourOffer;
import org.frisket.ui.bench.Bench;

/** Sets the workbench up: windows are remembered, the files of the command line are opened. */
final class FrisketWorkbenchAdvisor extends WorkbenchAdvisor {

	private final List<Path> files;

	FrisketWorkbenchAdvisor(List<Path> files) {
		this.files = files;
	}

	@Override
	public void initialize(IWorkbenchConfigurer configurer) {
		configurer.setSaveAndRestore(true);
	}

	@Override
	public String getInitialWindowPerspectiveId() {
		return BenchPerspective.ID;
	}

	@Override
	public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		return new FrisketWindowAdvisor(configurer);
	}

	@Override
	public void postStartup() {
		// by list and not by focus: the window need not be in front yet
		IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
		try {
			Bench.reopenUnsaved(page);
			for (Path file : files) {
				Bench.open(page, file);
			}
			TourOffer.make(page.getWorkbenchWindow());
		} catch (PartInitException e) {
			StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
		}
	}
}
