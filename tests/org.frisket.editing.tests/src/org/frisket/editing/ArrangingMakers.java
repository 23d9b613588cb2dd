package org.frisket.editing;

import static org.frisket.editing.RandomEdits.anyOf;
import static org.frisket.editing.RandomEdits.maker;

import org.frisket.editing.arranging.AddGuide;
import org.frisket.editing.arranging.AlignElements;
import org.frisket.editing.arranging.DistributeElements;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.arranging.MoveGuide;
import org.frisket.editing.arranging.RemoveGuide;
import org.frisket.editing.arranging.TransformElements;

/** Edits that lay elements elsewhere, and those of guides. */
final class ArrangingMakers {

	private ArrangingMakers() {
	}

	static void list() {
		maker(AddGuide.class, (job, c) -> new AddGuide(job, c.coin(), c.signed()));
		maker(AlignElements.class, (job, c) -> new AlignElements(c.boxes(job), c.of(AlignElements.Edge.values())));
		maker(DistributeElements.class,
				(job, c) -> new DistributeElements(c.boxes(job), c.of(DistributeElements.Direction.values())));
		maker(MoveElements.class, (job, c) -> new MoveElements(c.some(job), c.signed(), c.signed()));
		maker(MoveGuide.class, (job, c) -> c.guide(job, guide -> new MoveGuide(guide, c.signed())));
		maker(RemoveGuide.class, (job, c) -> c.guide(job, RemoveGuide::new));
		maker(TransformElements.class, anyOf(
				(job, c) -> TransformElements.scale(c.some(job), c.factor(), c.factor(), c.signed(), c.signed()),
				(job, c) -> TransformElements.rotate(c.some(job), c.signed(), c.signed(), c.signed()),
				(job, c) -> TransformElements.mirrorLeftRight(c.some(job), c.signed()),
				(job, c) -> TransformElements.mirrorTopBottom(c.some(job), c.signed())));
	}
}
