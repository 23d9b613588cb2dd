package org.frisket.ui.bench.internal.grips;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.frisket.editing.Edit;
import org.frisket.geometry.Transform;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.figures.GhostFigure;
import org.frisket.ui.bench.internal.figures.TagFigure;
import org.frisket.ui.bench.internal.parts.ElementPart;

/** A drag of a grip: ghosts show what would come of it, a tag says its measure, Escape gives up. */
abstract class GripTracker extends AbstractTool implements DragTracker {

	private static final int TAG_DISTANCE_PX = 18;

	protected final CanvasZoom zoom;
	private final GraphicalViewer viewer;
	private final List<ElementPart> parts;
	private final List<GhostFigure> ghosts = new ArrayList<>();
	private TagFigure tag;

	/** @param parts those whose ghosts are shown */
	GripTracker(GraphicalViewer viewer, CanvasZoom zoom, List<ElementPart> parts) {
		this.viewer = viewer;
		this.zoom = zoom;
		this.parts = parts;
	}

	/** What the drag comes to, from the place of the button's press to that of the pointer. */
	abstract Edit edit();

	/** Where the elements would come to lie. */
	abstract Transform map();

	/** The measure written beside the pointer. */
	abstract String measure();

	/** By how much the pointer was moved to the right, in mm. */
	final double dx() {
		return delta().width / zoom.pixelsPerMm();
	}

	/** By how much the pointer was moved down, in mm. */
	final double dy() {
		return delta().height / zoom.pixelsPerMm();
	}

	private Dimension delta() {
		return getDragMoveDelta();
	}

	/** The next power of ten below the size of a pixel, in mm. */
	final double step() {
		return Math.pow(10, Math.floor(Math.log10(1 / zoom.pixelsPerMm())));
	}

	final boolean isShiftHeld() {
		return getCurrentInput().isShiftKeyDown();
	}

	/** Either of two keys, since some window managers keep a drag with Alt for themselves. */
	final boolean isCentred() {
		return getCurrentInput().isControlKeyDown() || getCurrentInput().isAltKeyDown();
	}

	@Override
	protected String getCommandName() {
		return REQ_RESIZE;
	}

	@Override
	protected boolean handleButtonDown(int button) {
		setState(button == 1 ? STATE_DRAG : STATE_TERMINAL);
		return true;
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			show();
		}
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)) {
			erase();
			executeCommand(new EditCommand(edit()));
		}
		setState(STATE_TERMINAL);
		return true;
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		if (event.keyCode == SWT.ESC) {
			erase();
			setState(STATE_INVALID);
			return true;
		}
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			show();
		}
		return true;
	}

	@Override
	protected boolean handleKeyUp(KeyEvent event) {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			show();
		}
		return true;
	}

	private void show() {
		if (tag == null) {
			for (int i = 0; i < parts.size(); i++) {
				GhostFigure ghost = new GhostFigure(zoom);
				scaledFeedback().add(ghost);
				ghosts.add(ghost);
			}
			tag = new TagFigure();
			addFeedback(tag);
		}
		for (int i = 0; i < parts.size(); i++) {
			ghosts.get(i).show(parts.get(i).picture(), parts.get(i).shift().then(map()));
		}
		tag.setText(measure());
		Point place = getLocation().getTranslated(TAG_DISTANCE_PX, TAG_DISTANCE_PX);
		tag.getParent().translateToRelative(place);
		tag.setBounds(new Rectangle(place, tag.getPreferredSize()));
	}

	private void erase() {
		for (GhostFigure ghost : ghosts) {
			if (ghost.getParent() != null) {
				ghost.getParent().remove(ghost);
			}
		}
		ghosts.clear();
		if (tag != null) {
			removeFeedback(tag);
			tag = null;
		}
	}

	private IFigure scaledFeedback() {
		return LayerManager.Helper.find(viewer.getContents()).getLayer(LayerConstants.SCALED_FEEDBACK_LAYER);
	}

	@Override
	public void commitDrag() {
		// the edit is made when the button is let go
	}

	@Override
	public void deactivate() {
		erase();
		super.deactivate();
	}
}
