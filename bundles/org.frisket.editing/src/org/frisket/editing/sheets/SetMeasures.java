package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Jobs;
import org.frisket.model.MeasuredMark;
import org.frisket.model.Sheet;

/** Says where the register marks of a printed sheet were found, in the place of what was measured before. */
public final class SetMeasures extends RecordingEdit {

	private final Sheet sheet;
	private final List<MeasuredMark> measured;

	/** @param measured copied; none for a sheet that is not measured */
	public SetMeasures(Sheet sheet, Collection<MeasuredMark> measured) {
		super(measured.isEmpty() ? Messages.SetMeasures_forget : Messages.SetMeasures_name);
		this.sheet = sheet;
		this.measured = List.copyOf(EcoreUtil.copyAll(measured));
	}

	@Override
	public boolean canApply() {
		return Jobs.jobOf(sheet) != null && measured.stream().allMatch(this::isOfSheet)
				&& !EcoreUtil.equals(List.copyOf(sheet.getMeasured()), measured);
	}

	private boolean isOfSheet(MeasuredMark each) {
		return each.getMark() >= 0 && each.getMark() < sheet.getMarks().size() && Double.isFinite(each.getX())
				&& Double.isFinite(each.getY());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(sheet);
	}

	@Override
	protected void change() {
		sheet.getMeasured().clear();
		sheet.getMeasured().addAll(measured);
	}
}
