package org.frisket.app.internal;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.ILog;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;
import org.frisket.app.internal.appearance.Appearance;
import org.frisket.model.JobFile;
import org.frisket.ui.bench.StudioChoice;

/** Starts the workbench; every argument with the ending of a job file is opened. */
public final class WorkbenchApplication implements IApplication {

	@Override
	public Object start(IApplicationContext context) {
		WindowMemory.claim();
		StudioChoice.apply();
		List<Path> files = files((String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS));
		Display display = PlatformUI.createDisplay();
		Appearance.chosen().apply();
		try {
			int code = PlatformUI.createAndRunWorkbench(display, new FrisketWorkbenchAdvisor(files));
			return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
		} finally {
			display.dispose();
		}
	}

	private static List<Path> files(String[] arguments) {
		List<Path> files = new ArrayList<>();
		for (String argument : arguments == null ? new String[0] : arguments) {
			if (argument.endsWith(JobFile.ENDING)) {
				add(argument, files);
			}
		}
		return files;
	}

	private static void add(String argument, List<Path> files) {
		try {
			files.add(Path.of(argument).toAbsolutePath());
		} catch (InvalidPathException e) {
			ILog.of(WorkbenchApplication.class).warn("not the name of a file: " + argument, e); //$NON-NLS-1$
		}
	}

	@Override
	public void stop() {
		if (PlatformUI.isWorkbenchRunning()) {
			IWorkbench workbench = PlatformUI.getWorkbench();
			workbench.getDisplay().syncExec(workbench::close);
		}
	}
}
