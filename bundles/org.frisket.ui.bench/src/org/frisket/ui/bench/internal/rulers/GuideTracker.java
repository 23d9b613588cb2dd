package org.frisket.ui.bench.internal.rulers;

import org.eclipse.draw2d.Cursors;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.model.Guide;
import org.frisket.ui.bench.internal.snap.SnappingTracker;

/** Chooses a guide, drags it, and asks for its exact place at a double click. */
final class GuideTracker extends SnappingTracker {

	private final Guides guides;
	private final Guide guide;
	private GuideDrag drag;

	GuideTracker(Guides guides, Guide guide) {
		this.guides = guides;
		this.guide = guide;
	}

	@Override
	protected String getCommandName() {
		return REQ_MOVE;
	}

	@Override
	protected Cursor calculateCursor() {
		return guide.isAcross() ? Cursors.SIZENS : Cursors.SIZEWE;
	}

	@Override
	protected boolean handleButtonDown(int button) {
		if (button == 1) {
			guides.viewer().deselectAll();
			guides.choose(guide);
		}
		return super.handleButtonDown(button);
	}

	@Override
	protected boolean handleDragStarted() {
		drag = new GuideDrag(guides, guide, guide.isAcross());
		return super.handleDragStarted();
	}

	@Override
	protected void show() {
		drag.to(getLocation().x, getLocation().y, isFree());
	}

	@Override
	protected void finish() {
		// over the ruler the pointer may not have been heard of before
		show();
		drag.finish();
	}

	@Override
	protected boolean handleDoubleClick(int button) {
		if (button == 1) {
			setState(STATE_TERMINAL);
			guides.moveTyped(guide);
		}
		return true;
	}

	@Override
	protected void erase() {
		if (drag != null) {
			drag.erase();
		}
	}
}
