package org.frisket.ui.print.internal.output;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The picture of one of the sheets, with what chooses the sheet, its side, and what of it is seen. */
final class FaceView {

	private static final int WIDTH_PX = 560;
	private static final int HEIGHT_PX = 460;
	private static final int SPACING_PX = 8;

	private final FaceCanvas canvas;
	private final Button before;
	private final Button after;
	private final Label which;
	private final Button back;
	private final Runnable changed;
	private List<Integer> numbers = List.of();
	private int shown;

	/** @param changed told when another sheet or side is to be shown */
	FaceView(Composite parent, int first, Runnable changed) {
		this.changed = changed;
		shown = first;
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(SPACING_PX, SPACING_PX).applyTo(area);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		canvas = new FaceCanvas(area);
		GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH_PX, HEIGHT_PX).applyTo(canvas);
		Composite row = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(6).spacing(SPACING_PX, 0).applyTo(row);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		before = button(row, SWT.PUSH, Messages.FaceView_before, () -> turn(-1));
		which = new Label(row, SWT.CENTER);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(which);
		after = button(row, SWT.PUSH, Messages.FaceView_after, () -> turn(1));
		back = button(row, SWT.CHECK, Messages.FaceView_back, changed);
		back.setEnabled(false);
		toggle(row, Messages.FaceView_print, canvas::setPrintShown);
		toggle(row, Messages.FaceView_work, canvas::setWorkShown);
	}

	private interface Toggled {
		void to(boolean shown);
	}

	private static void toggle(Composite row, String text, Toggled toggled) {
		Button[] own = new Button[1];
		own[0] = button(row, SWT.CHECK, text, () -> toggled.to(own[0].getSelection()));
		own[0].setSelection(true);
	}

	private static Button button(Composite row, int style, String text, Runnable chosen) {
		Button button = new Button(row, style);
		button.setText(text);
		button.addListener(SWT.Selection, event -> chosen.run());
		return button;
	}

	private void turn(int by) {
		shown = numbers.get(Math.max(0, Math.min(numbers.size() - 1, numbers.indexOf(shown) + by)));
		tell();
		changed.run();
	}

	/** The sheets among which can be turned; one that is none of them any more is not shown. */
	void offer(List<Integer> wanted) {
		numbers = wanted;
		if (!numbers.contains(shown)) {
			shown = numbers.isEmpty() ? 0 : numbers.get(0);
		}
		tell();
	}

	private void tell() {
		int index = numbers.indexOf(shown);
		which.setText(index < 0 ? "" : NLS.bind(Messages.FaceView_sheet, shown)); //$NON-NLS-1$
		before.setEnabled(index > 0);
		after.setEnabled(index >= 0 && index < numbers.size() - 1);
	}

	/** The number of the sheet that is to be shown, from 1; 0 for none. */
	int shown() {
		return shown;
	}

	boolean isBack() {
		return back.getSelection();
	}

	void show(Face face) {
		back.setEnabled(face.twoSided());
		back.setSelection(face.back());
		canvas.show(face);
	}

	/** Nothing to show. @param hint why */
	void hide(String hint) {
		canvas.setHint(hint);
		canvas.show(null);
	}

	FaceCanvas canvas() {
		return canvas;
	}
}
