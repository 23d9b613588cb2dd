package org.frisket.ui.bench.internal.grips;

import org.eclipse.gef.GraphicalViewer;
import org.frisket.editing.Edit;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.nodes.LivePicture;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.picture.PictureMaker;
import org.frisket.ui.bench.internal.tools.PointerTag;

/**
 * A drag that sets a wording otherwise: no ghost could show what its letters come to, so the wording itself follows, on
 * a copy of the job. The job is changed when the button is let go.
 */
abstract class LiveTracker extends GripTracker {

	final Wording wording;
	private final LivePicture live;
	private final PointerTag tag;
	private final Transform toJob;

	LiveTracker(GraphicalViewer viewer, CanvasZoom zoom, ElementPart part, LivePicture live) {
		super(zoom);
		this.live = live;
		wording = (Wording) part.element();
		tag = new PointerTag(viewer);
		toJob = PictureMaker.transform(wording.getTransform());
	}

	/** What the drag comes to, of the wording of the job or of a copy of it. */
	abstract Edit edit(Wording target);

	@Override
	final Edit edit() {
		return edit(wording);
	}

	/** Where a place of the wording's own frame comes to by the drag; itself where the wording is flattened. */
	final Point dragged(Point from) {
		if (toJob.determinant() == 0) {
			return from;
		}
		Point start = toJob.apply(from);
		return toJob.inverse().apply(new Point(start.x() + dx(), start.y() + dy()));
	}

	@Override
	protected void show() {
		live.show(job -> Jobs.element(job, wording.getId()).map(Wording.class::cast).map(this::edit)
				.filter(Edit::canApply).ifPresent(Edit::apply));
		tag.show(measure(), getLocation());
	}

	@Override
	protected void erase() {
		tag.erase();
		live.stop(false);
	}

	@Override
	protected void finish() {
		boolean changes = edit().canApply();
		tag.erase();
		live.stop(changes);
		if (changes) {
			super.finish();
		}
	}
}
