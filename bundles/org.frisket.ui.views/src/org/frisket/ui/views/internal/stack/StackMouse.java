package org.frisket.ui.views.internal.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.prepare.Finding;
import org.frisket.ui.LengthText;
import org.frisket.ui.OperationName;

/** What the pointer does to the stack: each part of a row has a meaning of its own. */
final class StackMouse {

	private final StackCanvas canvas;
	private final RowDrag drag;
	private final ThreadPull pull;
	private Finding revealed;
	/** What was pressed last, and what before; rows may have moved in between. */
	private Row pressed;
	private Row pressedBefore;
	private Mat pointedAt;

	StackMouse(StackCanvas canvas) {
		this.canvas = canvas;
		drag = new RowDrag(canvas);
		pull = new ThreadPull(canvas);
		canvas.addListener(SWT.MouseDown, this::pressed);
		canvas.addListener(SWT.MouseDoubleClick, this::doubleClicked);
		canvas.addListener(SWT.MouseMove, this::hover);
		canvas.addListener(SWT.MouseExit, event -> pointAt(null));
	}

	private void pressed(Event event) {
		canvas.setFocus();
		canvas.commitName();
		Row row = canvas.rowAt(event.y);
		pressedBefore = pressed;
		pressed = event.button == 1 ? row : null;
		if (row == null) {
			return;
		}
		if (event.button == 3) {
			takeForMenu(row);
		} else if (event.button == 1) {
			press(row, event);
		}
	}

	/** The menu is about what it was asked of. */
	private void takeForMenu(Row row) {
		if (row.isLayer() || !canvas.bench().selection().contains(row.element())) {
			canvas.actions().go(row);
		} else {
			canvas.setCurrent(row);
		}
	}

	private void press(Row row, Event event) {
		Rectangle place = canvas.boundsOf(row);
		Mat mat = canvas.threadAt(event.x, event.y);
		if (mat != null) {
			canvas.actions().go(Row.of(mat));
			pull.press(mat, event);
		} else if (RowLayout.eyeOf(place).contains(event.x, event.y)) {
			canvas.setCurrent(row);
			canvas.actions().toggleVisible();
		} else if (RowLayout.pinOf(place).contains(event.x, event.y)) {
			canvas.setCurrent(row);
			canvas.actions().toggleLocked();
		} else if (canvas.findingsOf(row).contains(event.x, event.y)) {
			canvas.setCurrent(row);
			reveal(canvas.state(row).findings());
		} else if (row.isLayer()) {
			canvas.setCurrent(row);
			drag.press(row, List.of(), event.y);
		} else if (isOnBracket(row, event)) {
			canvas.setCurrent(row);
			canvas.actions().selectGroup();
		} else {
			pressElement(row, (event.stateMask & SWT.MOD1) != 0, event.y);
		}
	}

	private boolean isOnBracket(Row row, Event event) {
		return RowLayout.bracketsOf(canvas.boundsOf(row)).contains(event.x, event.y)
				&& Jobs.groupOf(row.element()).isPresent();
	}

	private void pressElement(Row row, boolean toggle, int y) {
		List<Element> selection = canvas.bench().selection();
		if (toggle) {
			List<Element> chosen = new ArrayList<>(selection);
			if (!chosen.remove(row.element())) {
				chosen.add(row.element());
			}
			canvas.setCurrent(row);
			canvas.bench().select(chosen);
		} else if (selection.contains(row.element())) {
			// the others stay selected in case that all are dragged
			canvas.setCurrent(row);
			drag.press(row, selection, y);
		} else {
			canvas.actions().go(row);
			drag.press(row, List.of(row.element()), y);
		}
	}

	/** A row was pressed and let go where it was. */
	void clicked(Row row) {
		if (!row.isLayer()) {
			canvas.actions().go(row);
		}
	}

	/** Shows the findings of a row one after the other. */
	private void reveal(List<Finding> findings) {
		int next = (findings.indexOf(revealed) + 1) % findings.size();
		revealed = findings.get(next);
		canvas.bench().reveal(revealed);
	}

	private void doubleClicked(Event event) {
		Row row = canvas.rowAt(event.y);
		// two presses in quick succession are a double click to the platform even when another row has come there
		if (row != null && row.equals(pressedBefore) && row.equals(pressed) && canvas.threadAt(event.x, event.y) == null
				&& event.x >= canvas.nameOf(row).x && !canvas.findingsOf(row).contains(event.x, event.y)) {
			drag.cancel();
			if (row.isLayer() && canvas.sheetOf(row).contains(event.x, event.y)) {
				canvas.actions().chooseColour();
			} else {
				canvas.actions().rename();
			}
		}
	}

	private void hover(Event event) {
		Row row = canvas.rowAt(event.y);
		Mat mat = canvas.threadAt(event.x, event.y);
		pointAt(mat);
		String tip = mat != null && pull.mat() == null
				? NLS.bind(Messages.StackMouse_pull, LengthText.of(mat.getDistance()))
				: row == null || drag.isMoving() || pull.mat() != null ? null : tip(row, event.x, event.y);
		if (!Objects.equals(tip, canvas.getToolTipText())) {
			canvas.setToolTipText(tip);
		}
	}

	private void pointAt(Mat mat) {
		if (pointedAt != mat) {
			pointedAt = mat;
			canvas.setCursor(mat == null ? null : canvas.getDisplay().getSystemCursor(SWT.CURSOR_SIZENS));
			canvas.redraw();
		}
	}

	private String tip(Row row, int x, int y) {
		Rectangle place = canvas.boundsOf(row);
		if (RowLayout.eyeOf(place).contains(x, y)) {
			return row.isLayer() ? row.isVisible() ? Messages.StackCanvas_hide : Messages.StackCanvas_show
					: row.isVisible() ? Messages.StackMouse_hide : Messages.StackMouse_show;
		}
		if (RowLayout.pinOf(place).contains(x, y)) {
			return row.isLayer() ? row.isLocked() ? Messages.StackCanvas_unlock : Messages.StackCanvas_lock
					: row.isLocked() ? Messages.StackMouse_unlock : Messages.StackMouse_lock;
		}
		List<Finding> findings = canvas.state(row).findings();
		if (canvas.findingsOf(row).contains(x, y)) {
			return findings.get((findings.indexOf(revealed) + 1) % findings.size()).message();
		}
		if (!row.isLayer() && !canvas.state(row).operations().isEmpty()) {
			return NLS.bind(Messages.StackPainter_parted, OperationName.of(canvas.state(row).operations()),
					StackPainter.pieces(canvas.state(row)));
		}
		return null;
	}

	/** The mat whose thread is pulled or pointed at; null if none is. */
	Mat thread() {
		return pull.mat() != null ? pull.mat() : pointedAt;
	}

	void cancel() {
		drag.cancel();
		pull.cancel();
	}

	void paint(StackPainter painter, int width) {
		drag.paint(painter, width);
		pull.paint(painter, width);
	}
}
