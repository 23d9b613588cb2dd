package org.frisket.editing.wording;

import java.util.Collection;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Wording;

/** One change of one wording that is not locked. */
abstract class WordingEdit extends RecordingEdit {

	private final Wording wording;
	private final Predicate<Wording> differs;
	private final Consumer<Wording> change;

	/** @param differs whether the change would make a difference, and one that can be */
	WordingEdit(String name, Wording wording, Predicate<Wording> differs, Consumer<Wording> change) {
		super(name);
		this.wording = wording;
		this.differs = differs;
		this.change = change;
	}

	/** The wording that is changed. */
	public final Wording wording() {
		return wording;
	}

	@Override
	public final boolean canApply() {
		return Targets.free(wording) && differs.test(wording);
	}

	@Override
	protected final Collection<? extends EObject> scope() {
		return List.of(wording);
	}

	@Override
	protected final void change() {
		change.accept(wording);
	}

	/** Whether a number may stand in a job in place of another. */
	static boolean isOther(double number, double old, double least) {
		return Double.isFinite(number) && number >= least && number != old;
	}
}
