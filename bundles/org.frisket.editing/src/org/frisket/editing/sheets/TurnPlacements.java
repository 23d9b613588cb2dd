package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Placement;

/** Turns parts on their sheets, each about its own centre. */
public final class TurnPlacements extends RecordingEdit {

	private static final double CIRCLE = 360;

	private final Set<Placement> placements;
	private final double degrees;

	/** @param degrees clockwise as seen */
	public TurnPlacements(Collection<Placement> placements, double degrees) {
		super(NLS.bind(Messages.TurnPlacements_name, SheetTargets.spoken(placements)));
		this.placements = new LinkedHashSet<>(placements);
		this.degrees = degrees;
	}

	@Override
	public boolean canApply() {
		return SheetTargets.inOneJob(placements) && Double.isFinite(degrees) && degrees % CIRCLE != 0;
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return placements;
	}

	/** Turns are kept from 0 to below 360. */
	@Override
	protected void change() {
		for (Placement placement : placements) {
			double turn = (placement.getTurn() + degrees) % CIRCLE;
			double positive = turn < 0 ? turn + CIRCLE : turn;
			placement.setTurn(positive >= CIRCLE ? 0 : positive);
		}
	}
}
