package org.frisket.ui.bench.internal.tools;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.frisket.ui.bench.internal.figures.MarqueeFigure;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.surface.SurfaceOption;
import org.frisket.ui.bench.internal.typing.Typing;

/**
 * Gathers what lies wholly inside a box: a wording can so be taken without the large mat behind it. Or all that the box
 * touches, if the user prefers that; while Control is held, the other of the two. With Shift it adds to the selection. A click without a drag selects nothing; a double
 * click begins a wording.
 */
public final class MarqueeTracker extends AbstractTool implements DragTracker {

	private MarqueeFigure marquee;
	private PointerTag tag;

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
			show(isTouching(getCurrentInput().isModKeyDown(SWT.MOD1)));
		}
		return true;
	}

	private static boolean isTouching(boolean other) {
		return SurfaceOption.BOX_TOUCHES.isOn() != other;
	}

	private void show(boolean touching) {
		if (marquee == null) {
			marquee = new MarqueeFigure();
			addFeedback(marquee);
			tag = new PointerTag(getCurrentViewer());
		}
		Rectangle box = box();
		marquee.getParent().translateToRelative(box);
		marquee.setBounds(box);
		marquee.setTouching(touching);
		tag.show(NLS.bind(touching ? Messages.MarqueeTracker_touched : Messages.MarqueeTracker_enclosed,
				gathered(touching).size()), getLocation());
	}

	/** The box changes its manner at once, and not only when the pointer next moves. */
	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		return switched(event, true) || super.handleKeyDown(event);
	}

	@Override
	protected boolean handleKeyUp(KeyEvent event) {
		return switched(event, false) || super.handleKeyUp(event);
	}

	private boolean switched(KeyEvent event, boolean other) {
		if (event.keyCode != SWT.MOD1 || marquee == null) {
			return false;
		}
		show(isTouching(other));
		return true;
	}

	private List<ElementPart> gathered(boolean touching) {
		return new Gathering(getCurrentViewer(), box(), touching).parts();
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)) {
			List<ElementPart> gathered = gathered(marquee != null && marquee.isTouching());
			erase();
			select(gathered);
		} else if (stateTransition(STATE_DRAG, STATE_TERMINAL) && !getCurrentInput().isShiftKeyDown()) {
			getCurrentViewer().deselectAll();
		}
		return true;
	}

	private void select(List<ElementPart> gathered) {
		List<ElementPart> chosen = new ArrayList<>();
		if (getCurrentInput().isShiftKeyDown()) {
			chosen.addAll(Selection.parts(getCurrentViewer()));
		}
		gathered.stream().filter(part -> !chosen.contains(part)).forEach(chosen::add);
		getCurrentViewer().setSelection(new StructuredSelection(chosen));
	}

	private Rectangle box() {
		return new Rectangle(getStartLocation(), getLocation());
	}

	private void erase() {
		if (marquee != null) {
			removeFeedback(marquee);
			marquee = null;
			tag.erase();
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
