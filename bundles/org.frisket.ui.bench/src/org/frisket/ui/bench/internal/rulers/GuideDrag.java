package org.frisket.ui.bench.internal.rulers;

import org.eclipse.draw2d.geometry.Point;
import org.frisket.editing.arranging.AddGuide;
import org.frisket.editing.arranging.MoveGuide;
import org.frisket.editing.arranging.RemoveGuide;
import org.frisket.geometry.snap.SnapAnchors;
import org.frisket.geometry.snap.SnapHold;
import org.frisket.geometry.snap.SnapResult;
import org.frisket.model.Guide;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.snap.SnapDrag;
import org.frisket.ui.bench.internal.snap.Snapping;
import org.frisket.ui.bench.internal.tools.PointerTag;

/** A guide on its way from the ruler to the bench, from one place to another, or back into the ruler. */
final class GuideDrag {

	private final Guides guides;
	private final Guide guide;
	private final boolean across;
	private final SnapDrag snap;
	private final PointerTag tag;
	private boolean overRuler = true;
	private double at;

	/** @param guide the guide that is moved; null for a new one */
	GuideDrag(Guides guides, Guide guide, boolean across) {
		this.guides = guides;
		this.guide = guide;
		this.across = across;
		snap = Snapping.of(guides.viewer()).beginGuide();
		tag = new PointerTag(guides.viewer());
	}

	/**
	 * Shows the guide under the pointer.
	 *
	 * @param px   the pointer in pixels of the canvas
	 * @param free whether nothing shall hold it
	 */
	void to(int px, int py, boolean free) {
		overRuler = across ? py < 0 : px < 0;
		CanvasZoom zoom = guides.zoom();
		org.frisket.geometry.Point mm = zoom.toMm(px, py);
		double raw = across ? mm.y() : mm.x();
		SnapResult held = free ? SnapResult.NONE
				: snap.snap(across ? SnapAnchors.horizontal(raw) : SnapAnchors.vertical(raw));
		at = (across ? held.y() : held.x()).map(SnapHold::line).map(line -> line.at()).orElse(zoom.rounded(raw));
		if (overRuler) {
			guides.layer().setDragged(null);
			snap.erase();
			tag.erase();
		} else {
			guides.layer().setDragged(new GuidePlace(guide, across, at));
			snap.show(held, org.frisket.geometry.Bounds.of(mm));
			tag.show(LengthText.of(at), new Point(px, py));
		}
	}

	/** Lays the guide where it was shown last; over the ruler, an old one is taken away and a new one forgotten. */
	void finish() {
		erase();
		if (guide == null) {
			if (!overRuler) {
				guides.execute(new AddGuide(guides.job(), across, at));
			}
		} else {
			guides.execute(overRuler ? new RemoveGuide(guide) : new MoveGuide(guide, at));
		}
	}

	/** Leaves everything as it was. */
	void erase() {
		guides.layer().setDragged(null);
		snap.erase();
		tag.erase();
	}
}
