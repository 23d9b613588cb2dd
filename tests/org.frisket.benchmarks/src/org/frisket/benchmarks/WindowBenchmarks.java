package org.frisket.benchmarks;

import java.util.concurrent.Callable;

import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/** Those benchmarks that need the workbench: it is started as ever, measured from within, and closed. */
public final class WindowBenchmarks implements IApplication {

	private static final String WORKBENCH = "org.frisket.app.workbench";
	private static final int LOOK_AGAIN_MS = 200;

	@Override
	public Object start(IApplicationContext context) throws Exception {
		Thread starter = new Thread(this::measureWhenOpen, "benchmarks");
		starter.setDaemon(true);
		starter.start();
		return workbench().start(context);
	}

	private static IApplication workbench() throws Exception {
		IConfigurationElement run = Platform.getExtensionRegistry()
				.getExtension("org.eclipse.core.runtime.applications", WORKBENCH).getConfigurationElements()[0].getChildren("run")[0];
		return (IApplication) run.createExecutableExtension("class");
	}

	private void measureWhenOpen() {
		try {
			while (!PlatformUI.isWorkbenchRunning() || PlatformUI.getWorkbench().isStarting()) {
				Thread.sleep(LOOK_AGAIN_MS);
			}
		} catch (InterruptedException e) {
			return;
		}
		Display display = PlatformUI.getWorkbench().getDisplay();
		display.asyncExec(() -> {
			try {
				measure(() -> KeystrokeBenchmark.run());
				measure(() -> DragBenchmark.run());
				measure(() -> OpenBenchmark.run());
			} finally {
				PlatformUI.getWorkbench().close();
			}
		});
	}

	/** One that fails says so and lets the others go on. */
	private static void measure(Callable<Void> benchmark) {
		try {
			benchmark.call();
		} catch (Exception e) {
			e.printStackTrace();
		}
	}

	@Override
	public void stop() {
		// closes itself
	}
}
