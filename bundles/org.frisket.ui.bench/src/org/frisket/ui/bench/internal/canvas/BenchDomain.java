package org.frisket.ui.bench.internal.canvas;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IEditorPart;

/**
 * Lets no drag be lost when the bench is busy. A move of the pointer comes with the buttons as they are when it is dealt
 * with, and not as they were when the pointer moved: after a quick drag all moves may tell of no button. GEF would take
 * the first of them for the release, and the drag for a click. Here a drag goes on until its button's release comes, and
 * ends where that was.
 */
public final class BenchDomain extends DefaultEditDomain {

	private static final int LEFT = 1;
	private static final int MIDDLE = 2;
	/**
	 * Between two moves without a button, in the event's own time, after which no release is awaited any more: it went
	 * to somebody else. One that is to come lies in the same queue.
	 */
	private static final int LOST_MS = 500;

	/** The button that is held; 0 for none. */
	private int held;
	/** Where the tool has followed the drag to. */
	private Point followed = new Point();
	/** Whether a move has told of no button although one is held, and when the first one did. */
	private boolean doubted;
	private int doubtedAt;

	public BenchDomain(IEditorPart editor) {
		super(editor);
	}

	@Override
	public void mouseDown(MouseEvent event, EditPartViewer viewer) {
		held = event.button == LEFT || event.button == MIDDLE ? event.button : 0;
		follow(event);
		super.mouseDown(event, viewer);
	}

	@Override
	public void mouseDrag(MouseEvent event, EditPartViewer viewer) {
		follow(event);
		super.mouseDrag(event, viewer);
	}

	@Override
	public void mouseMove(MouseEvent event, EditPartViewer viewer) {
		if (held != 0 && !isReleaseLost(event.time)) {
			// after the release, whose event is still to come and says where it was
			return;
		}
		held = 0;
		super.mouseMove(event, viewer);
	}

	private boolean isReleaseLost(int time) {
		if (!doubted) {
			doubted = true;
			doubtedAt = time;
		}
		return time - doubtedAt > LOST_MS;
	}

	@Override
	public void mouseUp(MouseEvent event, EditPartViewer viewer) {
		if (event.button == held) {
			held = 0;
			if (followed.x != event.x || followed.y != event.y) {
				super.mouseDrag(lastStep(event), viewer);
			}
		}
		super.mouseUp(event, viewer);
	}

	private void follow(MouseEvent event) {
		followed = new Point(event.x, event.y);
		doubted = false;
	}

	/** The move to the place of a release. */
	private static MouseEvent lastStep(MouseEvent release) {
		Event event = new Event();
		event.display = release.display;
		event.widget = release.widget;
		event.time = release.time;
		event.x = release.x;
		event.y = release.y;
		event.stateMask = release.stateMask | (release.button == LEFT ? SWT.BUTTON1 : SWT.BUTTON2);
		return new MouseEvent(event);
	}
}
