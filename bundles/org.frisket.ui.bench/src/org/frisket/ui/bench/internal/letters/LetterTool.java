package org.frisket.ui.bench.internal.letters;

import java.util.Optional;

import org.eclipse.draw2d.Cursors;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.geometry.Point;
import org.frisket.prepare.wording.LetterPlace;
import org.frisket.ui.bench.internal.snap.SnapDrag;
import org.frisket.ui.bench.internal.snap.SnapKey;
import org.frisket.ui.bench.internal.tools.PointerTag;

/**
 * The pointer while letters are nudged: a click chooses a letter, with Shift one more, a drag moves the chosen ones, or
 * turns or scales them by a grip. Alt keeps everything from holding them. Escape gives up the drag, or leaves; so does a
 * double click beside the letters.
 */
final class LetterTool extends AbstractTool {

	private static final int MIDDLE_BUTTON = 2;

	private final LetterMode mode;
	private final PointerTag tag;
	private SnapKey key = new SnapKey();
	private SnapDrag snap;
	private LetterDrag drag;
	private Point pressed;
	/** Was chosen before it was pressed, and will be the only one if nothing is dragged. */
	private LetterPlace pressedChosen;
	private org.eclipse.draw2d.geometry.Point panned;

	LetterTool(LetterMode mode, EditPartViewer viewer) {
		this.mode = mode;
		tag = new PointerTag(viewer);
	}

	String measure() {
		return tag.text();
	}

	boolean isDragging() {
		return isInState(STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected String getCommandName() {
		return REQ_SELECTION;
	}

	@Override
	protected Cursor calculateCursor() {
		if (panned != null) {
			return Cursors.HAND;
		}
		if (isInState(STATE_DRAG_IN_PROGRESS) && drag != null) {
			return Cursors.SIZEALL;
		}
		return isInState(STATE_INITIAL) && mode.isActive() && isOnSomething() ? Cursors.HAND : Cursors.ARROW;
	}

	private boolean isOnSomething() {
		LetterFrames frames = mode.frames();
		Point place = pointer();
		return frames.isOnTurnGrip(place) || frames.isOnScaleGrip(place) || frames.at(place).isPresent();
	}

	@Override
	protected boolean handleMove() {
		mode.pointerAt(pointer());
		refreshCursor();
		return true;
	}

	@Override
	protected boolean handleViewerExited() {
		mode.pointerAt(null);
		return super.handleViewerExited();
	}

	@Override
	protected boolean handleButtonDown(int button) {
		resetFlags();
		if (button == MIDDLE_BUTTON) {
			panned = getLocation();
		} else if (button == 1) {
			pressed = pointer();
			key = new SnapKey();
			snap = mode.snapping();
			drag = pick();
			setState(STATE_DRAG);
		}
		return true;
	}

	/** What the press takes hold of; a letter is chosen by it. */
	private LetterDrag pick() {
		pressedChosen = null;
		LetterFrames frames = mode.frames();
		Optional<LetterPlace> lead = frames.choice().lead(frames.letters());
		if (frames.isOnTurnGrip(pressed)) {
			return new LetterDrag.Turn(frames, lead.orElseThrow());
		}
		if (frames.isOnScaleGrip(pressed)) {
			return new LetterDrag.Scale(frames, lead.orElseThrow());
		}
		Optional<LetterPlace> letter = frames.at(pressed);
		boolean shift = getCurrentInput().isShiftKeyDown();
		if (letter.isEmpty()) {
			if (!shift) {
				mode.choose(LetterChoice.NONE);
			}
			return null;
		}
		if (shift) {
			mode.choose(frames.choice().toggled(letter.get()));
		} else if (frames.choice().contains(letter.get())) {
			pressedChosen = letter.get();
		} else {
			mode.choose(LetterChoice.of(letter.get()));
		}
		return mode.choice().contains(letter.get())
				? new LetterDrag.Move(mode.frames(), letter.get(), mode.zoom(), snap) : null;
	}

	private Point pointer() {
		return mode.zoom().toMm(getLocation().x, getLocation().y);
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		if (panned != null) {
			org.eclipse.draw2d.geometry.Point now = getLocation();
			mode.zoom().pan(panned.x - now.x, panned.y - now.y);
			panned = now;
		} else if (isInState(STATE_DRAG_IN_PROGRESS)) {
			follow();
		}
		return true;
	}

	private void follow() {
		if (drag != null) {
			drag.follow(pressed, pointer(), getCurrentInput().isShiftKeyDown(),
					key.isHeld(getCurrentInput().isAltKeyDown()));
			tag.show(drag.measure(), getLocation());
			mode.preview(drag);
		}
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (button == MIDDLE_BUTTON) {
			panned = null;
		}
		if (button == 1 && stateTransition(STATE_DRAG_IN_PROGRESS, STATE_INITIAL)) {
			LetterDrag done = drag;
			erase();
			if (done != null) {
				mode.execute(done.edit(mode.wording()));
			}
		} else if (button == 1 && stateTransition(STATE_DRAG, STATE_INITIAL)) {
			if (pressedChosen != null) {
				mode.choose(LetterChoice.of(pressedChosen));
			}
			erase();
		}
		refreshCursor();
		return true;
	}

	@Override
	protected boolean handleDoubleClick(int button) {
		if (button == 1 && !isOnSomething()) {
			setState(STATE_INITIAL);
			mode.end();
		}
		return true;
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		if (event.keyCode == SWT.ESC) {
			if (isInState(STATE_DRAG | STATE_DRAG_IN_PROGRESS)) {
				giveUpDrag();
				mode.endPreview();
			} else {
				mode.end();
			}
		} else {
			key.turned(event.keyCode, true);
			followKeys();
		}
		return true;
	}

	@Override
	protected boolean handleKeyUp(KeyEvent event) {
		key.turned(event.keyCode, false);
		followKeys();
		return true;
	}

	private void followKeys() {
		if (isInState(STATE_DRAG_IN_PROGRESS) && mode.isActive()) {
			follow();
		}
	}

	/** Nothing comes of a drag that is under way. */
	void giveUpDrag() {
		setState(STATE_INITIAL);
		erase();
	}

	private void erase() {
		drag = null;
		pressedChosen = null;
		tag.erase();
		if (snap != null) {
			snap.erase();
			snap = null;
		}
	}

	@Override
	public void deactivate() {
		erase();
		super.deactivate();
		mode.end();
	}
}
