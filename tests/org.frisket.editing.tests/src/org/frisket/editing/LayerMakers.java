package org.frisket.editing;

import static org.frisket.editing.RandomEdits.anyOf;
import static org.frisket.editing.RandomEdits.maker;

import org.frisket.editing.layers.AddLayer;
import org.frisket.editing.layers.DuplicateLayer;
import org.frisket.editing.layers.LayApart;
import org.frisket.editing.layers.MoveLayer;
import org.frisket.editing.layers.RemoveLayer;
import org.frisket.editing.layers.RenameLayer;
import org.frisket.editing.layers.RestackElements;
import org.frisket.editing.layers.SetLayerColour;
import org.frisket.editing.layers.SetLayerStock;
import org.frisket.editing.layers.SetLayers;

/** Edits of the stack. */
final class LayerMakers {

	private LayerMakers() {
	}

	static void list() {
		maker(AddLayer.class, (job, c) -> new AddLayer(job, c.below(job.getLayers().size() + 1), c.word()));
		maker(DuplicateLayer.class, (job, c) -> new DuplicateLayer(c.of(job.getLayers()), "Copy"));
		maker(MoveLayer.class, (job, c) -> new MoveLayer(c.of(job.getLayers()), c.below(job.getLayers().size())));
		maker(RemoveLayer.class, (job, c) -> new RemoveLayer(c.of(job.getLayers())));
		maker(RenameLayer.class, (job, c) -> new RenameLayer(c.of(job.getLayers()), c.word()));
		maker(LayApart.class, (job, c) -> new LayApart(c.someOrWhole(job)));
		maker(RestackElements.class, anyOf((job, c) -> RestackElements.onto(c.someOrWhole(job), c.of(job.getLayers())),
				(job, c) -> new RestackElements(c.some(job), c.of(job.getLayers()), c.below(5))));
		maker(SetLayerColour.class, (job, c) -> new SetLayerColour(c.of(job.getLayers()), c.of("#1d6f78", "#f4ecdc", null)));
		maker(SetLayerStock.class, (job, c) -> new SetLayerStock(c.of(job.getLayers()), c.word()));
		maker(SetLayers.class, anyOf((job, c) -> SetLayers.visible(c.layers(job), c.coin()),
				(job, c) -> SetLayers.locked(c.layers(job), c.below(5) == 0)));
	}
}
