package org.frisket.ui.bench.internal.places;

import java.util.List;

import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.PreviewColours;
import org.frisket.model.Wording;

/** The sample job: a banner for a ferry's anniversary, two lines with two mats. */
final class FerryBanner {

	private static final String FONT = "Liberation Serif"; //$NON-NLS-1$
	private static final String STYLE = "Bold"; //$NON-NLS-1$
	private static final double HEIGHT = 40;
	private static final double LEFT = 30;
	private static final double BASELINE = 80;
	private static final double NARROW = 4;
	private static final double WIDE = 9;
	/** Fills the slits and holes between the letters that no blade could cut. */
	private static final double SMOOTHING = 0.7;

	private FerryBanner() {
	}

	static Job make() {
		Job job = Jobs.create("sample", Messages.FerryBanner_title); //$NON-NLS-1$
		Layer wide = layer(job, Messages.FerryBanner_wideMat, PreviewColours.mat(1));
		Layer narrow = layer(job, Messages.FerryBanner_narrowMat, PreviewColours.mat(0));
		Layer front = layer(job, Messages.UntitledPlace_firstLayer, PreviewColours.WORDING);
		Wording wording = Jobs.addWording(front, Messages.FerryBanner_wording, HEIGHT);
		wording.setFont(Jobs.font(FONT, STYLE, null, null));
		wording.setTransform(Matrix.translation(LEFT, BASELINE));
		Jobs.addOperation(wording, OperationKind.CUT);
		cut(Jobs.addMat(narrow, NARROW, List.of(wording)));
		cut(Jobs.addMat(wide, WIDE, List.of(wording)));
		return job;
	}

	private static void cut(Mat mat) {
		mat.setSmoothing(SMOOTHING);
		Jobs.addOperation(mat, OperationKind.CUT);
	}

	private static Layer layer(Job job, String name, String colour) {
		Layer layer = Jobs.addLayer(job, name);
		layer.setColour(colour);
		return layer;
	}
}
