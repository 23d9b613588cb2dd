package org.frisket.editing;

import static org.frisket.editing.RandomEdits.anyOf;
import static org.frisket.editing.RandomEdits.maker;

import java.util.List;

import org.frisket.editing.elements.AddElement;
import org.frisket.editing.elements.ChangeOperation;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.elements.DuplicateElements;
import org.frisket.editing.elements.GroupElements;
import org.frisket.editing.elements.ImportArt;
import org.frisket.editing.elements.PasteElements;
import org.frisket.editing.elements.PlaceElement;
import org.frisket.editing.elements.RenameElements;
import org.frisket.editing.elements.RenameGroup;
import org.frisket.editing.elements.ReorderElements;
import org.frisket.editing.elements.SetElements;
import org.frisket.editing.elements.UngroupElements;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;

/** Edits of elements whatever they are. */
final class ElementMakers {

	private ElementMakers() {
	}

	static void list() {
		maker(AddElement.class, (job, c) -> new AddElement(c.of(job.getLayers()), c.outline()));
		maker(ChangeOperation.class, anyOf((job, c) -> ChangeOperation.kind(c.some(job), c.of(OperationKind.values())),
				(job, c) -> ChangeOperation.kind(c.some(job), c.below(3), c.of(OperationKind.values())),
				(job, c) -> ChangeOperation.tool(c.some(job), c.below(3), c.of("blade", "pen", null)),
				(job, c) -> ChangeOperation.passes(c.some(job), c.below(3), c.below(4)),
				(job, c) -> ChangeOperation.dash(c.some(job), c.below(3), c.length()),
				(job, c) -> ChangeOperation.gap(c.some(job), c.below(3), c.length()),
				(job, c) -> ChangeOperation.add(c.some(job), c.of(OperationKind.values())),
				(job, c) -> ChangeOperation.remove(c.some(job), c.below(3)),
				(job, c) -> ChangeOperation.earlier(c.some(job), c.below(3))));
		maker(DeleteElements.class, (job, c) -> new DeleteElements(c.some(job)));
		maker(DuplicateElements.class, (job, c) -> new DuplicateElements(c.some(job), c.signed(), c.signed()));
		maker(GroupElements.class, (job, c) -> new GroupElements(c.someOrWhole(job)));
		maker(ImportArt.class, anyOf(
				(job, c) -> c.fragment(job).map(art -> new ImportArt(job,
						List.of(new ImportArt.Sheet(art, c.signed(), c.signed())), "ferry.svg")).orElse(null),
				(job, c) -> c.fragment(job).map(art -> ImportArt.intoNew(job, art, "ferry.svg")).orElse(null)));
		maker(PasteElements.class, (job, c) -> c.fragment(job)
				.map(fragment -> new PasteElements(job, fragment, c.signed(), c.signed())).orElse(null));
		maker(PlaceElement.class, anyOf((job, c) -> new PlaceElement(job, c.outline(), c.word(), "#5b3a57"),
				(job, c) -> new PlaceElement(job, c.picture(), c.word(), "#5b3a57")));
		maker(RenameElements.class, (job, c) -> new RenameElements(c.some(job), c.word()));
		maker(RenameGroup.class, (job, c) -> job.getGroups().isEmpty() ? null
				: new RenameGroup(c.of(Jobs.groups(job)), c.word()));
		maker(ReorderElements.class, (job, c) -> new ReorderElements(c.some(job), c.of(ReorderElements.Way.values())));
		// locked less often than not, or soon nothing could be done any more
		maker(SetElements.class, anyOf((job, c) -> SetElements.visible(c.someOrWhole(job), c.coin()),
				(job, c) -> SetElements.locked(c.someOrWhole(job), c.below(5) == 0)));
		maker(UngroupElements.class, (job, c) -> new UngroupElements(c.someOrWhole(job)));
	}
}
