package org.frisket.ui.tests;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;

/**
 * A plate with a round window and a disc beside it, both on a mat. The plate is 60 × 40 mm from (20, 20), its window
 * has a radius of 10 mm about (50, 40); the disc has a radius of 20 mm about (120, 40).
 */
final class SampleJob {

	static final String PLATE_COLOUR = "#1f6f78";
	static final String DISC_COLOUR = "#d9a441";
	static final String MAT_COLOUR = "#5b3a57";
	static final double MAT_DISTANCE = 5;

	final Job job = Jobs.create("sample", "Ferry plate");
	final Mat mat;
	final Outline plate;
	final Outline disc;

	SampleJob() {
		Layer matLayer = layer("Mat", MAT_COLOUR);
		Layer plateLayer = layer("Plate", PLATE_COLOUR);
		Layer discLayer = layer("Disc", DISC_COLOUR);
		plate = Jobs.addOutline(plateLayer,
				"M 20 20 L 20 60 L 80 60 L 80 20 Z " + circle(50, 40, 10, true));
		disc = Jobs.addOutline(discLayer, circle(120, 40, 20, false));
		mat = Jobs.addMat(matLayer, MAT_DISTANCE, List.of(plate, disc));
		Jobs.addOperation(plate, OperationKind.CUT);
		Jobs.addOperation(disc, OperationKind.CUT);
		Jobs.addOperation(mat, OperationKind.CUT);
	}

	private Layer layer(String name, String colour) {
		Layer layer = Jobs.addLayer(job, name);
		layer.setColour(colour);
		return layer;
	}

	Path save(Path file) throws IOException {
		JobFile.save(job, file);
		return file;
	}

	/** Four cubic quarters, off the circle by less than 0.03 % of the radius, clockwise to the viewer or not. */
	static String circle(double x, double y, double radius, boolean clockwise) {
		double k = 0.5522847498 * radius;
		double s = clockwise ? 1 : -1;
		return String.format(Locale.ROOT,
				"M %s %s C %s %s %s %s %s %s C %s %s %s %s %s %s C %s %s %s %s %s %s C %s %s %s %s %s %s Z",
				x + radius, y,
				x + radius, y + s * k, x + k, y + s * radius, x, y + s * radius,
				x - k, y + s * radius, x - radius, y + s * k, x - radius, y,
				x - radius, y - s * k, x - k, y - s * radius, x, y - s * radius,
				x + k, y - s * radius, x + radius, y - s * k, x + radius, y);
	}
}
