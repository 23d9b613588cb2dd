package org.frisket.benchmarks;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.Alignment;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Composition;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.typography.FontFace;

/** The peak of the heap while the demo job is made, from a fresh process. */
final class HeapBenchmark {

	private HeapBenchmark() {
	}

	static void run() throws Exception {
		FontFace face = FontFace.read(Path.of("/usr/share/fonts/opentype/lobster/lobster.otf"));
		PreparedJob job = new JobPreparer(FontLibraries.installed()).prepare(
				new Composition("Harbour Lane\nPaperworks", face, 40, Alignment.CENTRE, OptionalDouble.of(0.3),
						List.of(3.0, 6.0), OperationKind.CUT).toJob(),
				Tolerance.DEFAULT, Monitor.NONE);
		Makeready.findings(job, Limits.CARD, Tolerance.DEFAULT, Monitor.NONE);
		for (String file : List.of("x.svg", "x.png")) {
			export(job, Exporters.forFile(file).orElseThrow().create());
		}
		long peak = ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP)
				.map(MemoryPoolMXBean::getPeakUsage).mapToLong(usage -> usage.getUsed()).sum();
		System.out.printf("peak heap of the demo job, SVG and PNG: %d MB (goal under 256)%n", peak >> 20);
	}

	private static void export(PreparedJob job, Exporter exporter) throws IOException {
		exporter.export(Handoff.of(job), OptionValues.defaults(exporter.options()), Monitor.NONE, new ByteArrayOutputStream());
	}
}
