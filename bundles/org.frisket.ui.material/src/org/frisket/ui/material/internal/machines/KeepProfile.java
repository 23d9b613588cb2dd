package org.frisket.ui.material.internal.machines;

import java.util.function.Consumer;

import org.eclipse.core.commands.operations.AbstractOperation;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.frisket.material.desk.Profile;

/** Keeps a profile as it was changed. It is kept a little later, on another thread. */
final class KeepProfile extends AbstractOperation {

	private final Profile before;
	private final Profile after;
	private final Consumer<String> failed;

	/** @param failed told why it could not be kept */
	KeepProfile(String label, IUndoContext context, Profile before, Profile after, Consumer<String> failed) {
		super(label);
		this.before = before;
		this.after = after;
		this.failed = failed;
		addContext(context);
	}

	@Override
	public IStatus execute(IProgressMonitor monitor, IAdaptable info) {
		return keep(after);
	}

	@Override
	public IStatus redo(IProgressMonitor monitor, IAdaptable info) {
		return keep(after);
	}

	@Override
	public IStatus undo(IProgressMonitor monitor, IAdaptable info) {
		return keep(before);
	}

	private IStatus keep(Profile profile) {
		StudioDesk.get().change(getLabel(), settings -> {
			profile.keep(settings);
			return null;
		}, nothing -> {
			// the state is news enough
		}, failed);
		return Status.OK_STATUS;
	}
}
