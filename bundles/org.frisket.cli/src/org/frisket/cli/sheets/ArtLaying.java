package org.frisket.cli.sheets;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.frisket.cli.files.ArtFile;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.work.Targets;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.impose.Budget;
import org.frisket.impose.Imposer;
import org.frisket.impose.Imposition;
import org.frisket.impose.Layout;
import org.frisket.impose.Part;
import org.frisket.model.Job;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;

/** Lays the shapes of an outline file. */
record ArtLaying(Path file, LayingOptions options, Map<String, String> settings, List<Path> outputs, boolean json) {

	int run(PrintWriter out, PrintWriter notes) throws Refusal {
		long begun = System.nanoTime();
		Targets targets = Targets.of(outputs);
		Budget budget = options.budget(1);
		ArtParts parts = ArtParts.of(file, ArtFile.of(file, settings).read(), Tolerance.DEFAULT, options.turning());
		Layout layout = Imposer.lay(imposition(parts.parts()), budget, better -> {
			// only the best is written
		}, Monitor.NONE);
		double took = (System.nanoTime() - begun) / 1e9;
		parts.passedOver().forEach(notes::println);
		if (!outputs.isEmpty()) {
			Job job = LayoutJob.of(ArtFile.title(file), layout);
			targets.write(job, new JobPreparer(FontLibraries.installed()).prepare(job, Tolerance.DEFAULT, Monitor.NONE),
					Map.of(), notes);
		}
		LayoutReport report = new LayoutReport(layout, took, options.seed(), outputs);
		if (json) {
			out.println(report.json());
		} else {
			report.print(out);
		}
		return layout.left().isEmpty() ? Status.DONE : Status.BLOCKED;
	}

	private Imposition imposition(List<Part> parts) throws Refusal {
		double gap = options.gap();
		double margin = options.margin();
		try {
			return new Imposition(parts, options.ground(), gap, margin);
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}
}
