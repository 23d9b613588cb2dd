package org.frisket.editing;

import java.util.Collection;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.change.ChangeDescription;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;

/**
 * An edit that is undone by what was seen to change while it was applied, so that only the change itself has to be
 * written down. Subclasses change what lies in their {@link #scope()} and nothing else.
 */
public abstract class RecordingEdit extends Edit {

	private final String name;
	/** Leads from the present state to the other one. */
	private ChangeDescription way;
	private boolean applied;

	protected RecordingEdit(String name) {
		this.name = name;
	}

	/** The objects that are changed, each with all it contains; as few as possible, for they are all watched. */
	protected abstract Collection<? extends EObject> scope();

	/** Makes the change; called once. */
	protected abstract void change();

	@Override
	public final String name() {
		return name;
	}

	@Override
	public final void apply() {
		if (way != null) {
			throw new IllegalStateException("'" + name + "' was applied before");
		}
		if (!canApply()) {
			throw new IllegalStateException("'" + name + "' cannot be applied");
		}
		ChangeRecorder recorder = new ChangeRecorder(scope());
		try {
			change();
			way = recorder.endRecording();
		} catch (RuntimeException | Error e) {
			recorder.endRecording().apply();
			throw e;
		} finally {
			recorder.dispose();
		}
		applied = true;
	}

	@Override
	public final void undo() {
		turn(true);
	}

	@Override
	public final void redo() {
		turn(false);
	}

	private void turn(boolean from) {
		if (way == null || applied != from) {
			throw new IllegalStateException("'" + name + "' is " + (applied ? "applied" : "not applied"));
		}
		way.applyAndReverse();
		applied = !from;
	}
}
