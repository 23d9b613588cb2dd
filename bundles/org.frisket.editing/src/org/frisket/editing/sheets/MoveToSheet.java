package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Jobs;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;

/** Takes parts to another sheet of the same stock and colour. */
public final class MoveToSheet extends RecordingEdit {

	private final Set<Placement> placements;
	private final Sheet sheet;
	private final double dx;
	private final double dy;

	/**
	 * @param dx how far to the right of their places on the old sheet they come to lie on the new one, in mm
	 * @param dy how far down
	 */
	public MoveToSheet(Collection<Placement> placements, Sheet sheet, double dx, double dy) {
		super(NLS.bind(Messages.MoveToSheet_name, SheetTargets.spoken(placements)));
		this.placements = new LinkedHashSet<>(placements);
		this.sheet = sheet;
		this.dx = dx;
		this.dy = dy;
	}

	@Override
	public boolean canApply() {
		return Double.isFinite(dx) && Double.isFinite(dy) && SheetTargets.inOneJob(placements)
				&& Jobs.jobOf(sheet) == Jobs.jobOf(placements.iterator().next())
				&& placements.stream().map(SheetTargets::sheetOf)
						.allMatch(from -> from != sheet && SheetTargets.areAlike(from, sheet));
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(Jobs.jobOf(sheet));
	}

	@Override
	protected void change() {
		for (Placement placement : placements) {
			placement.setX(placement.getX() + dx);
			placement.setY(placement.getY() + dy);
			sheet.getPlacements().add(placement);
		}
	}
}
