package org.frisket.ui.views.internal.properties;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;

import org.frisket.editing.Draft;
import org.frisket.editing.Edit;
import org.frisket.editing.EditGroup;
import org.frisket.editing.wording.ChangeSpan;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.editing.wording.Stretch;
import org.frisket.geometry.Bounds;
import org.frisket.model.Element;
import org.frisket.model.FontRef;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.Wording;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.TextRange;

/** Whose properties are shown: the selected elements of a bench. */
public final class Subject {

	private JobOnBench bench;
	private List<Element> elements = List.of();
	/** The letters that are selected in a wording, which is all there is then. */
	private Optional<TextRange> range = Optional.empty();

	public void set(JobOnBench newBench) {
		bench = newBench;
		range = bench == null ? Optional.empty() : bench.textRange();
		elements = elementsOf(bench);
	}

	/** Whether a bench shows the same as selected. */
	public boolean isSelectedOn(JobOnBench other) {
		return other != null && other == bench && range.equals(other.textRange()) && elements.equals(elementsOf(other));
	}

	private static List<Element> elementsOf(JobOnBench bench) {
		return bench == null ? List.of() : bench.textRange().map(r -> List.<Element>of(r.wording())).orElseGet(bench::selection);
	}

	/** The selected letters of a wording that is typed; empty if elements are selected as a whole. */
	public Optional<TextRange> range() {
		return range;
	}

	/** The selected letters, parted where they begin to be set otherwise; none if elements are selected as a whole. */
	public List<Stretch> stretches() {
		return range.map(r -> Stretch.of(r.wording(), r.start(), r.end())).orElse(List.of());
	}

	/** The fonts of the selected letters or wordings, null where none is chosen. */
	public List<FontRef> fonts() {
		return range.isPresent() ? stretches().stream().map(s -> s.fontIn(range.get().wording())).toList()
				: wordings().stream().map(Wording::getFont).toList();
	}

	/** How the selected letters or wordings get another font, whatever is selected by the time it is known. */
	public Function<FontRef, Edit> fontChange() {
		if (range.isPresent()) {
			TextRange letters = range.get();
			return font -> ChangeSpan.font(letters.wording(), letters.start(), letters.end(), font);
		}
		List<Wording> wordings = wordings();
		return font -> together(wordings, w -> ChangeWording.font(w, font));
	}

	public JobOnBench bench() {
		return bench;
	}

	public List<Element> elements() {
		return elements;
	}

	public List<Wording> wordings() {
		return elements.stream().filter(Wording.class::isInstance).map(Wording.class::cast).toList();
	}

	/** Sets the selected letters or wordings with other features. @param change from the features there are to others */
	public void setFeatures(UnaryOperator<String> change) {
		if (range.isPresent()) {
			Wording wording = range.get().wording();
			execute(stretches(), stretch -> ChangeSpan.features(wording, stretch.start(), stretch.end(),
					change.apply(Objects.requireNonNullElse(stretch.features(), "")))); //$NON-NLS-1$
		} else {
			execute(wordings(),
					w -> ChangeWording.features(w, change.apply(Objects.requireNonNullElse(w.getFeatures(), "")))); //$NON-NLS-1$
		}
	}

	/** What the mats of the selection follow in the end: the selected elements, for a mat those that it follows. */
	public List<Element> leaders() {
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
	public List<Mat> mats() {
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
	public Bounds bounds() {
		return bench == null ? Bounds.EMPTY : bench.bounds(elements);
	}

	public void execute(Edit edit) {
		bench.edits().execute(edit);
	}

	/** What is tried on the job until it is accepted. */
	public Draft draft() {
		return bench.draft();
	}

	/** The same change of several things as one step. */
	public <T> void execute(List<T> things, Function<T, Edit> change) {
		if (!things.isEmpty()) {
			execute(together(things, change));
		}
	}

	/** The same change of several things as one edit. */
	public static <T> Edit together(List<T> things, Function<T, Edit> change) {
		List<Edit> edits = things.stream().map(change).toList();
		return edits.size() == 1 ? edits.get(0)
				: new EditGroup(edits.isEmpty() ? "" : edits.get(0).name(), edits); //$NON-NLS-1$
	}

	/** The value that all have in common; null if they differ, have none, or there are none. */
	public static <T, V> V common(Collection<T> things, Function<T, V> value) {
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
