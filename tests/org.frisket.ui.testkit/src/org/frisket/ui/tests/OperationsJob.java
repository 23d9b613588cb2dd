package org.frisket.ui.tests;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;

/**
 * A gift tag with each operation. The card is 120 × 80 mm from the origin on a mat 6 mm larger; on the card lie a
 * printed square of 20 mm from (10, 10), two kiss cut squares of 20 mm from (40, 10) and (50, 20) that overlap, a
 * creased line at y = 50, a perforated one at y = 60 and a drawn one at y = 70, each from x = 10 to 110.
 */
final class OperationsJob {

	static final String CARD_COLOUR = "#e8d9b0";
	static final String MAT_COLOUR = "#24505c";

	final Job job = Jobs.create("tag", "Gift tag");
	private final Layer matLayer = layer("Mat 6 mm", MAT_COLOUR);
	private final Layer cardLayer = layer("Card", CARD_COLOUR);
	final Outline card = outline("M 0 0 V 80 H 120 V 0 Z", OperationKind.CUT);
	final Outline printed = outline("M 10 10 V 30 H 30 V 10 Z", OperationKind.PRINT);
	final Outline overlapping = outline("M 40 10 V 30 H 60 V 10 Z M 50 20 V 40 H 70 V 20 Z", OperationKind.KISS_CUT);
	final Outline creased = outline("M 10 50 H 110", OperationKind.CREASE);
	final Outline perforated = outline("M 10 60 H 110", OperationKind.PERFORATE);
	final Outline drawn = outline("M 10 70 H 110", OperationKind.DRAW);
	final Mat mat = Jobs.addMat(matLayer, 6, List.of(card));

	OperationsJob() {
		job.setNumber("2031");
		Jobs.addOperation(mat, OperationKind.CUT);
	}

	private Layer layer(String name, String colour) {
		Layer layer = Jobs.addLayer(job, name);
		layer.setColour(colour);
		return layer;
	}

	private Outline outline(String pathData, OperationKind kind) {
		Outline outline = Jobs.addOutline(cardLayer, pathData);
		Jobs.addOperation(outline, kind);
		return outline;
	}

	Path save(Path file) throws IOException {
		JobFile.save(job, file);
		return file;
	}
}
