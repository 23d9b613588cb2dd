package org.frisket.ui.views.internal.properties;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

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

	/** The selected mats and those that follow something selected, the narrowest first. */
	List<Mat> mats() {
		if (elements.isEmpty()) {
			return List.of();
		}
		Set<Element> selected = new HashSet<>(elements);
		return Jobs.elements(bench.job()).stream().filter(Mat.class::isInstance).map(Mat.class::cast)
				.filter(mat -> selected.contains(mat) || mat.getBehind().stream().anyMatch(selected::contains))
				.sorted(Comparator.comparingDouble(Mat::getDistance)).toList();
	}

	/** Around all that is selected, in mm, as it is shown now. */
	Bounds bounds() {
		return bench == null ? Bounds.EMPTY : bench.bounds(elements);
	}

	void execute(Edit edit) {
		bench.edits().execute(edit);
	}

	/** The same change of several things as one step. */
	<T> void execute(List<T> things, Function<T, Edit> change) {
		List<Edit> edits = things.stream().map(change).toList();
		if (edits.size() == 1) {
			execute(edits.get(0));
		} else if (!edits.isEmpty()) {
			execute(new EditGroup(edits.get(0).name(), edits));
		}
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
