package org.frisket.ui.tests;

import java.io.IOException;
import java.nio.file.Path;

import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;

/**
 * A job that makeready has something to say about: a plate of 80 × 40 mm from (20, 20), above it a strip 60 mm long and
 * 0.6 mm thick that lies at y = 80, and a speck of 1 × 1 mm at (120, 100).
 */
final class TroubledJob {

	static final double THICKNESS = 0.6;

	final Job job = Jobs.create("troubled", "Pier tags");
	final Layer plates = layer("Plates", "#1f6f78");
	final Layer strips = layer("Strips", "#d9a441");
	final Outline plate = cut(plates, 20, 20, 80, 40);
	final Outline strip = cut(strips, 20, 80, 60, THICKNESS);
	final Outline speck = cut(strips, 120, 100, 1, 1);

	private Layer layer(String name, String colour) {
		Layer layer = Jobs.addLayer(job, name);
		layer.setColour(colour);
		return layer;
	}

	private static Outline cut(Layer layer, double x, double y, double width, double height) {
		Outline outline = Jobs.addOutline(layer,
				"M" + x + " " + y + "v" + height + "h" + width + "v" + -height + "z");
		Jobs.addOperation(outline, OperationKind.CUT);
		return outline;
	}

	/** Many more pieces that are too small, each on its own. */
	void addSpecks(int count) {
		for (int i = 0; i < count; i++) {
			cut(strips, 130 + i % 10 * 4, 20 + i / 10 * 4, 1, 1);
		}
	}

	/** A tag that overlaps the plate by 10 mm. */
	Outline addOverlapping() {
		return cut(plates, 90, 30, 40, 20);
	}

	Path save(Path file) throws IOException {
		JobFile.save(job, file);
		return file;
	}
}
