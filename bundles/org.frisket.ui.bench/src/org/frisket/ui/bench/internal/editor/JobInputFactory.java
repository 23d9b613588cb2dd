package org.frisket.ui.bench.internal.editor;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.ui.IElementFactory;
import org.eclipse.ui.IMemento;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.PlaceInput;
import org.frisket.ui.bench.UntitledInput;
import org.frisket.ui.bench.internal.places.FilePlace;
import org.frisket.ui.bench.internal.places.UntitledPlace;

/** Remembers from one session to the next which job files were open, and leads from recovery copies to their jobs. */
public final class JobInputFactory implements IElementFactory {

	/** What was remembered before there were keys. */
	private static final String PATH = "path"; //$NON-NLS-1$

	@Override
	public IAdaptable createElement(IMemento memento) {
		String key = memento.getString(PlaceInput.KEY);
		String path = key == null ? memento.getString(PATH) : after(FilePlace.FACTORY, key);
		try {
			if (path != null) {
				return new JobInput(Path.of(path));
			}
			String number = key == null ? null : after(UntitledPlace.FACTORY, key);
			return number == null ? null : new UntitledInput(Integer.parseInt(number));
		} catch (InvalidPathException | NumberFormatException e) {
			// written on another system: there is no such file here
			return null;
		}
	}

	/** What a factory knows a place by; null if the key is none of its own. */
	private static String after(String factory, String key) {
		return key.startsWith(factory + ':') ? key.substring(factory.length() + 1) : null;
	}
}
