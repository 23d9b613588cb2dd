package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Jobs;
import org.frisket.model.RegisterMark;
import org.frisket.model.Sheet;

/** Puts register marks in the place of those of a sheet. Where the old ones were measured is forgotten with them. */
public final class SetMarks extends RecordingEdit {

	private final Sheet sheet;
	private final List<RegisterMark> marks;

	/** @param marks copied; none for a sheet that is not printed */
	public SetMarks(Sheet sheet, Collection<RegisterMark> marks) {
		super(marks.isEmpty() ? Messages.SetMarks_remove : Messages.SetMarks_name);
		this.sheet = sheet;
		this.marks = List.copyOf(EcoreUtil.copyAll(marks));
	}

	@Override
	public boolean canApply() {
		return Jobs.jobOf(sheet) != null && !EcoreUtil.equals(List.copyOf(sheet.getMarks()), marks);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(sheet);
	}

	@Override
	protected void change() {
		sheet.getMeasured().clear();
		sheet.getMarks().clear();
		sheet.getMarks().addAll(marks);
	}
}
