package org.frisket.ui.bench.internal.editor;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.ui.IElementFactory;
import org.eclipse.ui.IMemento;
import org.frisket.ui.bench.JobInput;

/** Remembers from one session to the next which job files were open. */
public final class JobInputFactory implements IElementFactory {

	public static final String ID = "org.frisket.ui.bench.jobInputs"; //$NON-NLS-1$

	private static final String PATH = "path"; //$NON-NLS-1$

	public static void save(JobInput input, IMemento memento) {
		memento.putString(PATH, input.path().toString());
	}

	@Override
	public IAdaptable createElement(IMemento memento) {
		String path = memento.getString(PATH);
		try {
			return path == null ? null : new JobInput(Path.of(path));
		} catch (InvalidPathException e) {
			// written on another system: there is no such file here
			return null;
		}
	}
}
