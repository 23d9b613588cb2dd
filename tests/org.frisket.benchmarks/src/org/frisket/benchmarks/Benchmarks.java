package org.frisket.benchmarks;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** Those benchmarks that run inside one process. */
public final class Benchmarks implements IApplication {

	@Override
	public Object start(IApplicationContext context) throws Exception {
		context.applicationRunning();
		HeapBenchmark.run();
		UnionBenchmark.run();
		TextBenchmark.run();
		CentrelineBenchmark.run();
		FontIndexBenchmark.run();
		FitnessBenchmark.run();
		CleanBenchmark.run();
		RefitBenchmark.run();
		OutsetBenchmark.run();
		ImportBenchmark.run();
		return IApplication.EXIT_OK;
	}

	@Override
	public void stop() {
		// runs to its end
	}
}
