package org.frisket.editing.shapes;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Mat;

/** Lets a mat stand further out or in. */
public final class SetMatDistance extends RecordingEdit {

	private final Mat mat;
	private final double distance;

	/** @param distance in mm; negative makes the mat smaller than what it follows */
	public SetMatDistance(Mat mat, double distance) {
		super(Messages.ChangeMat_distance);
		this.mat = mat;
		this.distance = distance;
	}

	@Override
	public boolean canApply() {
		return Double.isFinite(distance) && distance != mat.getDistance() && Targets.free(mat);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(mat);
	}

	@Override
	protected void change() {
		mat.setDistance(distance);
	}
}
