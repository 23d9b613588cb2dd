package org.frisket.ui.bench.internal.tools;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.jface.viewers.StructuredSelection;
import org.frisket.ui.bench.internal.figures.MarqueeFigure;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.typing.Typing;

/**
 * Gathers what lies wholly inside a box: a wording can so be taken without the large mat behind it. With Shift it adds
 * to the selection. A click without a drag selects nothing; a double click begins a wording.
 */
public final class MarqueeTracker extends AbstractTool implements DragTracker {

	private MarqueeFigure marquee;

	@Override
	protected String getCommandName() {
		return REQ_SELECTION;
	}

	@Override
	protected boolean handleButtonDown(int button) {
		if (button == 1) {
			stateTransition(STATE_INITIAL, STATE_DRAG);
		} else {
			setState(STATE_TERMINAL);
		}
		return true;
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			if (marquee == null) {
				marquee = new MarqueeFigure();
				addFeedback(marquee);
			}
			Rectangle box = box();
			marquee.getParent().translateToRelative(box);
			marquee.setBounds(box);
		}
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)) {
			erase();
			select();
		} else if (stateTransition(STATE_DRAG, STATE_TERMINAL) && !getCurrentInput().isShiftKeyDown()) {
			getCurrentViewer().deselectAll();
		}
		return true;
	}

	private void select() {
		List<ElementPart> chosen = new ArrayList<>();
		if (getCurrentInput().isShiftKeyDown()) {
			chosen.addAll(Selection.parts(getCurrentViewer()));
		}
		for (ElementPart part : Selection.all(getCurrentViewer())) {
			if (part.isSelectable() && box().contains(part.boundsInPixels()) && !chosen.contains(part)) {
				chosen.add(part);
			}
		}
		getCurrentViewer().setSelection(new StructuredSelection(chosen));
	}

	private Rectangle box() {
		return new Rectangle(getStartLocation(), getLocation());
	}

	private void erase() {
		if (marquee != null) {
			removeFeedback(marquee);
			marquee = null;
		}
	}

	@Override
	protected boolean handleDoubleClick(int button) {
		Typing typing = Typing.of(getCurrentViewer());
		if (button == 1 && typing != null && getCurrentViewer().getContents() instanceof JobPart job) {
			typing.begin(job.zoom().toMm(getLocation().x, getLocation().y));
		}
		return true;
	}

	@Override
	public void commitDrag() {
		// nothing is committed: the box only selects
	}

	@Override
	public void deactivate() {
		erase();
		super.deactivate();
	}
}
