package org.frisket.benchmarks;

import java.util.List;
import java.util.concurrent.Callable;

import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/**
 * Those benchmarks that need the workbench: it is started as ever, measured from within, and closed. All are run, or
 * those that are named as arguments: {@code keys}, {@code drag}, {@code open}, {@code scroll}.
 */
public final class WindowBenchmarks implements IApplication {

	private static final String WORKBENCH = "org.frisket.app.workbench";
	private static final int LOOK_AGAIN_MS = 200;
	private static final List<String> KNOWN = List.of("keys", "drag", "open", "scroll");

	@Override
	public Object start(IApplicationContext context) throws Exception {
		List<String> named = List.of((String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS));
		Thread starter = new Thread(() -> measureWhenOpen(named), "benchmarks");
		starter.setDaemon(true);
		starter.start();
		return workbench().start(context);
	}

	private static IApplication workbench() throws Exception {
		IConfigurationElement run = Platform.getExtensionRegistry()
				.getExtension("org.eclipse.core.runtime.applications", WORKBENCH).getConfigurationElements()[0].getChildren("run")[0];
		return (IApplication) run.createExecutableExtension("class");
	}

	private void measureWhenOpen(List<String> named) {
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
				measure("keys", named, () -> KeystrokeBenchmark.run());
				measure("drag", named, () -> DragBenchmark.run());
				measure("open", named, () -> OpenBenchmark.run());
				measure("scroll", named, () -> ScrollBenchmark.run());
			} finally {
				PlatformUI.getWorkbench().close();
			}
		});
	}

	/** One that fails says so and lets the others go on. */
	private static void measure(String name, List<String> named, Callable<Void> benchmark) {
		if (KNOWN.stream().anyMatch(named::contains) && !named.contains(name)) {
			return;
		}
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
