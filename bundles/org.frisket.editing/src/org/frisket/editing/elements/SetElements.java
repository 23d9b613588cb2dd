package org.frisket.editing.elements;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Jobs;

/** Shows or hides, locks or frees elements; both also for those that are locked. */
public final class SetElements extends RecordingEdit {

	private final Set<Element> elements;
	private final Predicate<Element> has;
	private final BiConsumer<Element, Boolean> setter;
	private final boolean value;

	private SetElements(String name, List<? extends Element> elements, Predicate<Element> has,
			BiConsumer<Element, Boolean> setter, boolean value) {
		super(NLS.bind(name, Targets.spoken(elements)));
		this.elements = new LinkedHashSet<>(elements);
		this.has = has;
		this.setter = setter;
		this.value = value;
	}

	/** Shows elements, or takes them out of sight and out of what is handed out. */
	public static SetElements visible(List<? extends Element> elements, boolean visible) {
		return new SetElements(visible ? Messages.SetElements_show : Messages.SetElements_hide, elements,
				Element::isVisible, Element::setVisible, visible);
	}

	/** Locks elements against every other edit, or frees them. */
	public static SetElements locked(List<? extends Element> elements, boolean locked) {
		return new SetElements(locked ? Messages.SetElements_lock : Messages.SetElements_unlock, elements,
				Element::isLocked, Element::setLocked, locked);
	}

	@Override
	public boolean canApply() {
		return elements.stream().map(Jobs::jobOf).distinct().count() == 1
				&& elements.stream().allMatch(element -> Jobs.jobOf(element) != null)
				&& elements.stream().anyMatch(element -> has.test(element) != value);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return elements;
	}

	@Override
	protected void change() {
		elements.forEach(element -> setter.accept(element, value));
	}
}
