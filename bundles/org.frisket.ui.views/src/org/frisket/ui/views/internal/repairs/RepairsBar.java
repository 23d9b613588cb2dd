package org.frisket.ui.views.internal.repairs;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The line above steps and repairs: what is found, and what can be done about it. */
final class RepairsBar {

	private static final int SPACING_PX = 8;

	private final RepairsView view;
	private final Composite bar;
	private Label summary;
	private Button compare;
	private Button apply;

	RepairsBar(Composite parent, RepairsView view) {
		this.view = view;
		bar = new Composite(parent, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
	}

	/** @param steps what its first buttons are for */
	void fill(StepsPanel steps) {
		summary = new Label(bar, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(summary);
		button(SWT.PUSH, Messages.RepairsView_only, Messages.RepairsView_onlyHint, steps::onlyOne);
		button(SWT.PUSH, Messages.RepairsView_recommended, Messages.RepairsView_recommendedHint, steps::recommend);
		compare = button(SWT.TOGGLE, Messages.RepairsView_before, Messages.RepairsView_beforeHint, view::toggle);
		button(SWT.PUSH, Messages.RepairsView_cancel, Messages.RepairsView_cancelHint, view::cancel);
		apply = button(SWT.PUSH, Messages.RepairsView_apply, Messages.RepairsView_applyHint, view::apply);
		GridLayoutFactory.fillDefaults().numColumns(bar.getChildren().length).spacing(SPACING_PX, 0).applyTo(bar);
	}

	private Button button(int style, String text, String hint, Runnable action) {
		Button button = new Button(bar, style);
		button.setText(text);
		button.setToolTipText(hint);
		button.addListener(SWT.Selection, event -> action.run());
		return button;
	}

	/** @param canApply whether there is anything to apply */
	void say(String text, boolean canApply) {
		summary.setText(text);
		bar.getParent().layout(true, true);
		apply.setEnabled(canApply);
	}

	/** @param before whether the job is seen as it is */
	void showCompare(boolean there, boolean before) {
		compare.setEnabled(there);
		compare.setSelection(before);
	}

	String text() {
		return summary.getText();
	}

	boolean isDisposed() {
		return bar.isDisposed();
	}
}
