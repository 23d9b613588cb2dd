package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Placement;

/** Moves parts on their sheets, pinned or not. */
public final class MovePlacements extends RecordingEdit {

	private final Set<Placement> placements;
	private final double dx;
	private final double dy;

	/** @param dx to the right in mm, @param dy down */
	public MovePlacements(Collection<Placement> placements, double dx, double dy) {
		super(NLS.bind(Messages.MovePlacements_name, SheetTargets.spoken(placements)));
		this.placements = new LinkedHashSet<>(placements);
		this.dx = dx;
		this.dy = dy;
	}

	@Override
	public boolean canApply() {
		return SheetTargets.inOneJob(placements) && Double.isFinite(dx) && Double.isFinite(dy) && (dx != 0 || dy != 0);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return placements;
	}

	@Override
	protected void change() {
		for (Placement placement : placements) {
			placement.setX(placement.getX() + dx);
			placement.setY(placement.getY() + dy);
		}
	}
}
