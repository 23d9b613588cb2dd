package org.frisket.ui.material.internal.machines;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** What the page of machines and tools shows: all of them. */
public record MachinesInput() implements IEditorInput {

	@Override
	public boolean exists() {
		return true;
	}

	@Override
	public ImageDescriptor getImageDescriptor() {
		return RoomIcon.MACHINES.descriptor();
	}

	@Override
	public String getName() {
		return Messages.MachinesInput_name;
	}

	@Override
	public IPersistableElement getPersistable() {
		return null;
	}

	@Override
	public String getToolTipText() {
		return Messages.MachinesInput_toolTip;
	}

	@Override
	public <T> T getAdapter(Class<T> adapter) {
		return null;
	}
}
