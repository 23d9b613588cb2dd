package org.frisket.ui.bench;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;
import org.frisket.ui.Icon;

/**
 * A job that has no file yet. It is not among what the workbench remembers: what was not saved when the program ended
 * comes back by its recovery copy.
 *
 * @param number tells several from each other, from 1
 */
public record UntitledInput(int number) implements IEditorInput {

	@Override
	public boolean exists() {
		return false;
	}

	@Override
	public ImageDescriptor getImageDescriptor() {
		return Icon.JOB.descriptor();
	}

	@Override
	public String getName() {
		return number == 1 ? Messages.UntitledInput_first : NLS.bind(Messages.UntitledInput_further, number);
	}

	@Override
	public String getToolTipText() {
		return NLS.bind(Messages.UntitledInput_toolTip, getName());
	}

	@Override
	public IPersistableElement getPersistable() {
		return null;
	}

	@Override
	public <T> T getAdapter(Class<T> adapter) {
		return null;
	}
}
