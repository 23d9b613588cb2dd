package org.frisket.ui.tests;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;

/** Two wordings in a font that comes with the program, the first with a mat behind it. */
final class WordingJob {

	final Job job = Jobs.create("wording", "Harbour Lane");
	final Layer matLayer = layer("Mat 3 mm", "#1d6f78");
	final Layer front = layer("Wording", "#f4ecdc");
	final Wording first = wording("Harbour", 20, 0);
	final Wording second = wording("Lane", 12, 50);
	final Mat mat = Jobs.addMat(matLayer, 3, List.of(first));

	WordingJob() {
		Jobs.addOperation(mat, OperationKind.CUT);
	}

	private Layer layer(String name, String colour) {
		Layer layer = Jobs.addLayer(job, name);
		layer.setColour(colour);
		return layer;
	}

	private Wording wording(String text, double height, double y) {
		Wording wording = Jobs.addWording(front, text, height);
		wording.setFont(Jobs.font("Liberation Sans", null, null, null));
		wording.setTransform(Matrix.translation(10, 30 + y));
		Jobs.addOperation(wording, OperationKind.CUT);
		return wording;
	}

	Path save(Path file) throws IOException {
		JobFile.save(job, file);
		return file;
	}
}
