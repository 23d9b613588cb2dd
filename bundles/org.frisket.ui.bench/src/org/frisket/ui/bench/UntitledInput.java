package org.frisket.ui.bench;

import java.util.HashSet;
import java.util.Set;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IPersistableElement;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.frisket.ui.Icon;
import org.frisket.ui.bench.internal.files.Recovery;
import org.frisket.ui.bench.internal.places.UntitledPlace;

/**
 * A job that has no file yet. It is not among what the workbench remembers: what was not saved when the program ended
 * comes back by its recovery copy.
 *
 * @param number tells several from each other, from 1; 0 for the sample
 */
public record UntitledInput(int number) implements IEditorInput {

	/** The sample job, of which there is one. */
	public static final UntitledInput SAMPLE = new UntitledInput(0);

	/**
	 * One that is not taken: neither open, nor waiting to be brought back.
	 *
	 * @throws PartInitException if an editor does not say what it shows
	 */
	public static UntitledInput next(IWorkbenchPage page) throws PartInitException {
		Set<Integer> taken = new HashSet<>();
		Recovery.all().forEach(unsaved -> taken.add(unsaved.number()));
		for (IEditorReference reference : page.getEditorReferences()) {
			if (reference.getEditorInput() instanceof UntitledInput untitled) {
				taken.add(untitled.number());
			}
		}
		int number = 1;
		while (taken.contains(number)) {
			number++;
		}
		return new UntitledInput(number);
	}

	private JobPlace place() {
		return new UntitledPlace(number);
	}

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
		return place().name();
	}

	@Override
	public String getToolTipText() {
		return place().toolTip();
	}

	@Override
	public IPersistableElement getPersistable() {
		return null;
	}

	@Override
	public <T> T getAdapter(Class<T> adapter) {
		return adapter == JobPlace.class ? adapter.cast(place()) : null;
	}
}
