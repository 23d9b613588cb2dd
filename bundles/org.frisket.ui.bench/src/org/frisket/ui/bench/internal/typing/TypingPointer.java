package org.frisket.ui.bench.internal.typing;

import org.eclipse.gef.DragTracker;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.Request;
import org.eclipse.gef.requests.LocationRequest;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.frisket.geometry.Point;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.parts.Selection;

/**
 * What the pointer does to a wording that is typed: a press sets the caret, with Shift it selects up to there, a drag
 * selects letters, a double click a word; a press elsewhere ends the typing.
 */
final class TypingPointer {

	/** How far beside its letters a press still means the wording, in heights of a capital. */
	private static final double BESIDE = 0.25;
	private static final int LEAST_BESIDE_PX = 6;
	private static final int MOST_BESIDE_PX = 24;

	private final GraphicalViewer viewer;
	private final Typing typing;

	TypingPointer(GraphicalViewer viewer, Typing typing) {
		this.viewer = viewer;
		this.typing = typing;
	}

	void pressed(Event event) {
		if (!typing.isActive()) {
			return;
		}
		if (isInside(event.x, event.y)) {
			moveTo(event.x, event.y, (event.stateMask & SWT.SHIFT) != 0);
		} else {
			typing.end(false);
		}
	}

	void pressedTwice(Event event) {
		// the double click that begins the typing comes before any place is known
		if (typing.isActive() && event.button == 1 && !typing.places().isEmpty() && isInside(event.x, event.y)) {
			Point place = place(event.x, event.y);
			typing.change(text -> {
				text.setCaret(typing.wordingCaret().letterAt(typing.wording(), place, text.caret()));
				text.selectWord();
			});
		}
	}

	/** Moves the caret to the place between letters that is nearest to a pixel of the canvas. */
	void moveTo(int x, int y, boolean extending) {
		if (typing.isActive()) {
			Point place = place(x, y);
			typing.move(text -> text.setCaret(typing.wordingCaret().nearest(typing.wording(), place, text.caret())),
					extending);
		}
	}

	DragTracker tracker(Request request) {
		return typing.isActive() && request instanceof LocationRequest press && press.getLocation() != null
				&& isInside(press.getLocation().x, press.getLocation().y) ? new TextTracker(this) : null;
	}

	/** Whether a pixel of the canvas lies within the wording that is typed, or just beside its first or last letter. */
	private boolean isInside(int x, int y) {
		double beside = typing.wording().getHeight() * BESIDE * ((JobPart) viewer.getContents()).zoom().pixelsPerMm();
		int edge = (int) Math.min(MOST_BESIDE_PX, Math.max(LEAST_BESIDE_PX, beside));
		return Selection.all(viewer).stream().anyMatch(part -> part.element() == typing.wording()
				&& part.boundsInPixels().expand(edge, edge).contains(x, y));
	}

	private Point place(int x, int y) {
		return ((JobPart) viewer.getContents()).zoom().toMm(x, y);
	}
}
