package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Jobs;
import org.frisket.model.Sheet;

/** Takes a sheet away, with all that lies on it. */
public final class RemoveSheet extends RecordingEdit {

	private final Sheet sheet;

	public RemoveSheet(Sheet sheet) {
		super(Messages.RemoveSheet_name);
		this.sheet = sheet;
	}

	@Override
	public boolean canApply() {
		return Jobs.jobOf(sheet) != null;
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(Jobs.jobOf(sheet));
	}

	@Override
	protected void change() {
		Jobs.jobOf(sheet).getSheets().remove(sheet);
	}
}
