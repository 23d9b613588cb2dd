package org.frisket.ui.views.internal.properties;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

import org.frisket.editing.Draft;
import org.frisket.editing.Edit;
import org.frisket.editing.EditGroup;
import org.frisket.geometry.Bounds;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.Wording;
import org.frisket.ui.bench.JobOnBench;

/** Whose properties are shown: the selected elements of a bench. */
final class Subject {

	private JobOnBench bench;
	private List<Element> elements = List.of();

	void set(JobOnBench newBench) {
		bench = newBench;
		elements = bench == null ? List.of() : bench.selection();
	}

	JobOnBench bench() {
		return bench;
	}

	List<Element> elements() {
		return elements;
	}

	List<Wording> wordings() {
		return elements.stream().filter(Wording.class::isInstance).map(Wording.class::cast).toList();
	}

	/** What the mats of the selection follow in the end: the selected elements, for a mat those that it follows. */
	List<Element> leaders() {
		Set<Element> leaders = new LinkedHashSet<>();
		Set<Element> seen = new HashSet<>();
		elements.forEach(element -> addLeaders(element, leaders, seen));
		return leaders.isEmpty() ? elements : List.copyOf(leaders);
	}

	private static void addLeaders(Element element, Set<Element> leaders, Set<Element> seen) {
		if (!seen.add(element)) {
			return;
		}
		if (element instanceof Mat mat && !mat.getBehind().isEmpty()) {
			mat.getBehind().forEach(next -> addLeaders(next, leaders, seen));
		} else {
			leaders.add(element);
		}
	}

	/** The selected mats and all that follow the {@link #leaders()}, through others too; the narrowest first. */
	List<Mat> mats() {
		if (elements.isEmpty()) {
			return List.of();
		}
		Set<Element> reached = new HashSet<>(elements);
		reached.addAll(leaders());
		List<Mat> all = Jobs.elements(bench.job()).stream().filter(Mat.class::isInstance).map(Mat.class::cast).toList();
		boolean grew = true;
		while (grew) {
			grew = false;
			for (Mat mat : all) {
				grew |= mat.getBehind().stream().anyMatch(reached::contains) && reached.add(mat);
			}
		}
		return all.stream().filter(reached::contains).sorted(Comparator.comparingDouble(Mat::getDistance)).toList();
	}

	/** Around all that is selected, in mm, as it is shown now. */
	Bounds bounds() {
		return bench == null ? Bounds.EMPTY : bench.bounds(elements);
	}

	void execute(Edit edit) {
		bench.edits().execute(edit);
	}

	/** What is tried on the job until it is accepted. */
	Draft draft() {
		return bench.draft();
	}

	/** The same change of several things as one step. */
	<T> void execute(List<T> things, Function<T, Edit> change) {
		if (!things.isEmpty()) {
			execute(together(things, change));
		}
	}

	/** The same change of several things as one edit. */
	static <T> Edit together(List<T> things, Function<T, Edit> change) {
		List<Edit> edits = things.stream().map(change).toList();
		return edits.size() == 1 ? edits.get(0)
				: new EditGroup(edits.isEmpty() ? "" : edits.get(0).name(), edits); //$NON-NLS-1$
	}

	/** The value that all have in common; null if they differ, have none, or there are none. */
	static <T, V> V common(Collection<T> things, Function<T, V> value) {
		V first = null;
		boolean any = false;
		for (T thing : things) {
			V each = value.apply(thing);
			if (any && !Objects.equals(first, each)) {
				return null;
			}
			first = each;
			any = true;
		}
		return first;
	}
}
