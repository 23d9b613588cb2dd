package org.frisket.editing;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.frisket.model.Outline;

/** Gives an outline the path data it was repaired to; where it lies on the bench stays as it is. */
public final class RepairPath extends RecordingEdit {

	private final Outline outline;
	private final String pathData;

	/**
	 * @param name     what the repair does: "Close contour"
	 * @param pathData in the outline's own frame
	 */
	public RepairPath(String name, Outline outline, String pathData) {
		super(name);
		this.outline = outline;
		this.pathData = pathData;
	}

	@Override
	public boolean canApply() {
		return pathData != null && Targets.free(outline) && !Objects.equals(pathData, outline.getPathData());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(outline);
	}

	@Override
	protected void change() {
		outline.setPathData(pathData);
	}
}
