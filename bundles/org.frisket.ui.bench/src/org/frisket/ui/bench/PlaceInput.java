package org.frisket.ui.bench;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableElement;
import org.frisket.ui.Icon;

/** A job to lay on the bench that is kept elsewhere than in a file. */
public final class PlaceInput implements IEditorInput, IPersistableElement {

	/** Under which the key of a place is remembered from one session to the next. */
	public static final String KEY = "key"; //$NON-NLS-1$

	private final JobPlace place;

	public PlaceInput(JobPlace place) {
		this.place = place;
	}

	public JobPlace place() {
		return place;
	}

	@Override
	public boolean exists() {
		return true;
	}

	@Override
	public ImageDescriptor getImageDescriptor() {
		return Icon.JOB.descriptor();
	}

	@Override
	public String getName() {
		return place.name();
	}

	@Override
	public String getToolTipText() {
		return place.toolTip();
	}

	@Override
	public IPersistableElement getPersistable() {
		return this;
	}

	@Override
	public void saveState(IMemento memento) {
		memento.putString(KEY, place.key());
	}

	@Override
	public String getFactoryId() {
		return place.factory();
	}

	@Override
	public <T> T getAdapter(Class<T> adapter) {
		return adapter == JobPlace.class ? adapter.cast(place) : null;
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof PlaceInput input && place.key().equals(input.place.key());
	}

	@Override
	public int hashCode() {
		return place.key().hashCode();
	}

	@Override
	public String toString() {
		return place.key();
	}
}
