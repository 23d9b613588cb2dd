package org.frisket.ui.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.frisket.editing.Draft;
import org.frisket.editing.EditExecutor;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Wording;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.Cure;

/**
 * The job that lies on a bench, for the views around it. A bench adapts to it; one whose file could not be read does
 * not. Only for the UI thread.
 */
public interface JobOnBench {

	/** Told of what happens on a bench, on the UI thread. */
	interface Listener {

		/** The job was edited, or an edit was taken back; what was worked out before is out of date from now on. */
		default void jobChanged() {
		}

		/** There are newer regions or findings. */
		default void pictureChanged() {
		}

		/** It is known what helps against the findings; later than the findings themselves. */
		default void curesMade() {
		}

		/** The flag of a finding was clicked. */
		default void findingChosen(Finding finding) {
		}

		/** The bench shows the job as it would be after an edit, or again as it is. */
		default void previewChanged() {
		}

		/** Other elements are selected than before, or other letters of a wording that is typed. */
		default void selectionChanged() {
		}
	}

	/** The job itself; it is changed through {@link #edits()} and in no other way. */
	Job job();

	/** Where every change goes, each of them one step of undo. */
	EditExecutor edits();

	/**
	 * The job as it was last worked through: out of date unless {@link #isUpToDate()}, and made of a copy of the job,
	 * so that its elements are found by id. Empty before it was worked through for the first time.
	 */
	Optional<PreparedJob> prepared();

	/**
	 * What the last makeready that ran to its end found, the gravest first; out of date unless {@link #isUpToDate()}.
	 */
	List<Finding> findings();

	/** Whether regions and findings are those of the job as it is now. */
	boolean isUpToDate();

	/** Whether it is known what helps against the gravest findings of the job as it is now. */
	boolean areCuresKnown();

	/** Whether it is known what helps against this finding of the job as it is now. */
	boolean areCuresKnown(Finding finding);

	/**
	 * Has what helps against a finding looked for where it is not known; of a long list, only the gravest are cured
	 * unasked. It is told by {@link Listener#curesMade()}.
	 */
	void seekCures(Finding finding);

	/** What helps against a finding, the best first; empty where nothing does, and before it is known. */
	List<Cure> cures(Finding finding);

	/** Carries a cure out, which is one step of undo; nothing happens while it is not known whether it still helps. */
	void cure(Cure cure);

	/** What is tried on the job while a slider is dragged or a list is gone through. There is one for all the bench. */
	Draft draft();

	/** The job as it would be after an edit that is weighed without haste, and not in the way of any other. */
	JobPreview preview();

	/** The selected elements, in the order of selection. */
	List<Element> selection();

	/** The letters that are selected in the wording that is typed just now; empty if none are. */
	Optional<TextRange> textRange();

	/** Selects these elements and no others; those that are hidden or locked cannot be selected and are left out. */
	void select(List<? extends Element> elements);

	/**
	 * Has the user click an element on the bench; Escape, or another tool, gives up.
	 *
	 * @param prompt said beside the pointer
	 * @param wanted which elements may be clicked
	 * @param picked told of the one that was
	 */
	void pick(String prompt, Predicate<Element> wanted, Consumer<Element> picked);

	/** Around these elements as they are shown now, in mm; empty where nothing of them is shown. */
	Bounds bounds(List<? extends Element> elements);

	/** Where something new is put that nobody has chosen a place for: a place in mm that is seen now. */
	Point openPlace();

	/** The wording that is being typed; empty if there is no caret. */
	Optional<Wording> typed();

	/** Puts characters in at the caret; nothing happens if there is none. */
	void type(String characters);

	/**
	 * Asks how files of others are to be taken in, and lays them into the job, which is one step of undo.
	 *
	 * @param place where their middle comes to lie, in mm; empty leaves them where they are in their files
	 */
	void importFiles(List<Path> files, Optional<Point> place);

	/** Scrolls a place in mm into view if it is not seen yet. */
	void reveal(Point place);

	/** Shows where a finding is, with its measure, and selects its element. */
	void reveal(Finding finding);

	void addListener(Listener listener);

	void removeListener(Listener listener);
}
