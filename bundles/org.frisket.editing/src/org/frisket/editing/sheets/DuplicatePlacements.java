package org.frisket.editing.sheets;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Placement;

/** Lays one more copy of parts on their sheets. The copies are not pinned. */
public final class DuplicatePlacements extends RecordingEdit {

	private final Set<Placement> placements;
	private final double dx;
	private final double dy;
	private final List<Placement> copies = new ArrayList<>();

	/** @param dx how far to the right of the others the copies lie, in mm, @param dy how far down */
	public DuplicatePlacements(Collection<Placement> placements, double dx, double dy) {
		super(NLS.bind(Messages.DuplicatePlacements_name, SheetTargets.spoken(placements)));
		this.placements = new LinkedHashSet<>(placements);
		this.dx = dx;
		this.dy = dy;
	}

	@Override
	public boolean canApply() {
		return SheetTargets.inOneJob(placements) && Double.isFinite(dx) && Double.isFinite(dy);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return SheetTargets.sheetsOf(placements);
	}

	@Override
	protected void change() {
		Job job = Jobs.jobOf(placements.iterator().next());
		for (Placement placement : placements) {
			Placement copy = EcoreUtil.copy(placement);
			copy.setCopy(SheetTargets.nextCopy(job, placement));
			copy.setX(placement.getX() + dx);
			copy.setY(placement.getY() + dy);
			copy.setPinned(false);
			SheetTargets.sheetOf(placement).getPlacements().add(copy);
			copies.add(copy);
		}
	}

	/** The copies; empty before the edit is applied. */
	public List<Placement> copies() {
		return List.copyOf(copies);
	}
}
