package org.frisket.benchmarks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** Those benchmarks that run inside one process. */
public final class Benchmarks implements IApplication {

	private interface Benchmark {

		void run() throws Exception;
	}

	/** In the order in which they run; each alone by its name as an argument. */
	private static Map<String, Benchmark> all() {
		Map<String, Benchmark> all = new LinkedHashMap<>();
		all.put("heap", HeapBenchmark::run);
		all.put("union", UnionBenchmark::run);
		all.put("text", TextBenchmark::run);
		all.put("centreline", CentrelineBenchmark::run);
		all.put("index", FontIndexBenchmark::run);
		all.put("fitness", FitnessBenchmark::run);
		all.put("clean", CleanBenchmark::run);
		all.put("refit", RefitBenchmark::run);
		all.put("outset", OutsetBenchmark::run);
		all.put("trace", TraceBenchmark::run);
		all.put("marks", MarksBenchmark::run);
		all.put("impose", ImposeBenchmark::run);
		all.put("tour", TourBenchmark::run);
		all.put("run", RunBenchmark::run);
		all.put("import", ImportBenchmark::run);
		all.put("export", ExportBenchmark::run);
		all.put("stock", StockTableBenchmark::run);
		all.put("store", StockImportBenchmark::run);
		all.put("orders", OrderBookBenchmark::run);
		all.put("saves", JobSaveBenchmark::run);
		all.put("desks", DesksBenchmark::run);
		all.put("advice", AdviceBenchmark::run);
		return all;
	}

	@Override
	public Object start(IApplicationContext context) throws Exception {
		context.applicationRunning();
		List<String> wanted = List.of((String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS));
		for (Map.Entry<String, Benchmark> each : all().entrySet()) {
			if (wanted.isEmpty() || wanted.contains(each.getKey())) {
				each.getValue().run();
			}
		}
		return IApplication.EXIT_OK;
	}

	@Override
	public void stop() {
		// runs to its end
	}
}
