package org.frisket.benchmarks;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.export.Handoff;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.fonts.FontLibraries;

/** A large job written in each format, beside SVG, which is text and nothing else. */
final class ExportBenchmark {

	private static final int SIDE = 100;
	private static final double SPACING = 4;
	private static final String PEER = "svg";

	/** What writes the job in one format, and how large that is. */
	private record Format(String ending, Supplier<byte[]> writer, int bytes) {
	}

	private ExportBenchmark() {
	}

	/** The order of work is found before: it is no matter of the format. */
	static void run() throws Exception {
		Handoff job = Handoff.of(new JobPreparer(FontLibraries.installed()).prepare(job(), Tolerance.DEFAULT, Monitor.NONE));
		job.run(Monitor.NONE);
		List<Format> formats = new ArrayList<>();
		for (Contribution<Exporter> each : Exporters.all()) {
			Exporter exporter = each.create();
			Supplier<byte[]> writer = () -> written(exporter, job);
			try {
				Format format = new Format(Exporters.ending(each), writer, writer.get().length);
				formats.add(format.ending().equals(PEER) ? 0 : formats.size(), format);
			} catch (RuntimeException e) {
				System.out.printf("export of %d contours as %s: %s%n", SIDE * SIDE, Exporters.ending(each), e.getMessage());
			}
		}
		double[] ms = Stopwatch.cpu(false, formats.stream().map(Format::writer).toArray(Supplier[]::new));
		for (int i = 0; i < ms.length; i++) {
			double mb = formats.get(i).bytes() / 1e6;
			System.out.printf("export of %d contours as %s: %.2f MB in %.0f ms, %.1f MB/s; %.2f times SVG%n", SIDE * SIDE,
					formats.get(i).ending(), mb, ms[i], 1000 * mb / ms[i], ms[i] / ms[0]);
		}
	}

	private static byte[] written(Exporter exporter, Handoff job) {
		try {
			ByteArrayOutputStream out = new ByteArrayOutputStream();
			exporter.export(job, OptionValues.defaults(exporter.options()), Monitor.NONE, out);
			return out.toByteArray();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** Discs in rows, a row to an element, in turn to be cut, creased and drawn. */
	private static Job job() {
		Job job = Jobs.create("large", "Ten thousand confetti");
		Layer layer = Jobs.addLayer(job, "Card");
		OperationKind[] kinds = { OperationKind.CUT, OperationKind.CREASE, OperationKind.DRAW };
		for (int row = 0; row < SIDE; row++) {
			List<Contour> discs = new ArrayList<>();
			for (int i = 0; i < SIDE; i++) {
				discs.add(Flattened.circle(SPACING * i, SPACING * row, 1 + 0.5 * Math.sin(row + 3.1 * i)));
			}
			Jobs.addOperation(Jobs.addOutline(layer, PathData.format(new Outline(discs), 4)), kinds[row % kinds.length]);
		}
		return job;
	}
}
