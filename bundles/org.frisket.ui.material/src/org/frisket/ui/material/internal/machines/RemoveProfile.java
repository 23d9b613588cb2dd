package org.frisket.ui.material.internal.machines;

import java.io.IOException;
import java.util.function.Consumer;

import org.eclipse.core.commands.operations.AbstractOperation;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.frisket.material.desk.Profile;
import org.frisket.material.desk.SettingsDesk;

/** Takes a machine or a tool from the studio; undo brings it back as it was. It is done a little later, on another thread. */
final class RemoveProfile extends AbstractOperation {

	private final Profile profile;
	private final Consumer<String> failed;

	/** @param failed told why it could not be done */
	RemoveProfile(String label, IUndoContext context, Profile profile, Consumer<String> failed) {
		super(label);
		this.profile = profile;
		this.failed = failed;
		addContext(context);
	}

	@Override
	public IStatus execute(IProgressMonitor monitor, IAdaptable info) {
		return change(settings -> {
			profile.remove(settings);
			return null;
		});
	}

	@Override
	public IStatus redo(IProgressMonitor monitor, IAdaptable info) {
		return execute(monitor, info);
	}

	@Override
	public IStatus undo(IProgressMonitor monitor, IAdaptable info) {
		return change(settings -> {
			profile.keep(settings);
			return null;
		});
	}

	private IStatus change(SettingsDesk.Work<Object, IOException> work) {
		StudioDesk.get().change(getLabel(), work, nothing -> {
			// the state is news enough
		}, failed);
		return Status.OK_STATUS;
	}
}
