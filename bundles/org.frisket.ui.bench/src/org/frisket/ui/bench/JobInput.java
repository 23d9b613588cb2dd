package org.frisket.ui.bench;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableElement;
import org.frisket.ui.Icon;
import org.frisket.ui.bench.internal.places.FilePlace;

/** A job file to lay on the bench. The file need not exist; the editor says so if it does not. */
public final class JobInput implements IEditorInput, IPersistableElement {

	private final Path path;

	public JobInput(Path path) {
		this.path = path.toAbsolutePath().normalize();
	}

	/** Where the file is, absolute. */
	public Path path() {
		return path;
	}

	private JobPlace place() {
		return new FilePlace(path);
	}

	@Override
	public boolean exists() {
		return Files.exists(path);
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
		return this;
	}

	@Override
	public void saveState(IMemento memento) {
		memento.putString(PlaceInput.KEY, place().key());
	}

	@Override
	public String getFactoryId() {
		return place().factory();
	}

	@Override
	public <T> T getAdapter(Class<T> adapter) {
		if (adapter == JobPlace.class) {
			return adapter.cast(place());
		}
		return adapter.isInstance(path) ? adapter.cast(path) : null;
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof JobInput input && path.equals(input.path);
	}

	@Override
	public int hashCode() {
		return path.hashCode();
	}

	@Override
	public String toString() {
		return path.toString();
	}
}
