package org.frisket.ui.material.internal.trials;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;
import org.frisket.ui.material.internal.machines.RoomIcon;

/**
 * A test sheet to work on.
 *
 * @param id of the sheet; empty for one that is only planned
 */
public record TestSheetInput(String id) implements IEditorInput {

	/** One that is only planned. */
	public static final TestSheetInput NEW = new TestSheetInput(""); //$NON-NLS-1$

	@Override
	public boolean exists() {
		return !id.isEmpty();
	}

	@Override
	public ImageDescriptor getImageDescriptor() {
		return RoomIcon.TEST_SHEET.descriptor();
	}

	@Override
	public String getName() {
		return id.isEmpty() ? Messages.TestSheetInput_new : NLS.bind(Messages.TestSheetInput_name, id);
	}

	@Override
	public IPersistableElement getPersistable() {
		return null;
	}

	@Override
	public String getToolTipText() {
		return getName();
	}

	@Override
	public <T> T getAdapter(Class<T> adapter) {
		return null;
	}
}
