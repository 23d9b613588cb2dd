package org.frisket.editing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.elements.PlaceElement;
import org.frisket.editing.layers.RenameLayer;
import org.frisket.model.Job;
import org.frisket.model.Jobs;

/**
 * Makes any edit there is with any values a user might give. Each class of edit has one line, in the makers of its
 * room; several makers of one class are joined by {@link #anyOf}.
 */
final class RandomEdits {

	/** Makes an edit of a job as it is now; null if the job has nothing for it. It need not be applicable. */
	interface Maker {
		Edit make(Job job, Choice choice);
	}

	private static final Map<Class<? extends Edit>, Maker> MAKERS = new LinkedHashMap<>();

	static {
		ElementMakers.list();
		ArrangingMakers.list();
		LayerMakers.list();
		WordingMakers.list();
		ShapeMakers.list();
		SheetMakers.list();
		maker(EditGroup.class, (job, c) -> new EditGroup("Change several", List.of(
				new MoveElements(c.some(job), c.signed(), c.signed()), new RenameLayer(c.of(job.getLayers()), c.word()))));
		maker(ReloadJob.class, anyOf((job, c) -> new ReloadJob(job, c.changedOutside(job)),
				(job, c) -> ReloadJob.taken(job, c.changedOutside(job)), (job, c) -> ReloadJob.merged(job, c.changedOutside(job))));
	}

	private RandomEdits() {
	}

	static void maker(Class<? extends Edit> type, Maker maker) {
		MAKERS.put(type, maker);
	}

	static Maker anyOf(Maker... makers) {
		return (job, choice) -> choice.of(makers).make(job, choice);
	}

	static Set<Class<? extends Edit>> classes() {
		return MAKERS.keySet();
	}

	/** Any edit; null if the one that was picked has nothing to work on. */
	static Edit any(Job job, Random random) {
		Choice choice = new Choice(random);
		if (job.getLayers().isEmpty()) {
			return MAKERS.get(PlaceElement.class).make(job, choice);
		}
		// a job that grows without end would only slow the test down
		Class<? extends Edit> type = Jobs.elements(job).size() > 60 ? DeleteElements.class
				: choice.of(List.copyOf(MAKERS.keySet()));
		return MAKERS.get(type).make(job, choice);
	}
}
