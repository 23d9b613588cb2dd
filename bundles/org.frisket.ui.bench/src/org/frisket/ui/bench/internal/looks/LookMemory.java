package org.frisket.ui.bench.internal.looks;

import org.eclipse.ui.IMemento;

/** The look of a bench from one session of the workbench to the next. */
public final class LookMemory {

	private static final String LOOK = "look"; //$NON-NLS-1$

	private String remembered;

	public void read(IMemento memento) {
		remembered = memento.getString(LOOK);
	}

	/** @param looks null if there are none, for the job could not be read; then what was read is written again */
	public void write(IMemento memento, Looks looks) {
		memento.putString(LOOK, looks == null ? remembered : looks.chosen().name());
	}

	public void restore(Looks looks) {
		looks.restore(remembered);
	}
}
