package org.frisket.ui.material.internal.machines;

import java.text.NumberFormat;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.ui.ThemeColour;

/** What both calibrations have in common: what to do in words, a result, and a button that keeps it. */
abstract class Calibration extends Composite {

	private static final int SPACE_PX = 8;
	private static final int NOTE_PX = 460;
	private Label result;
	private Button keep;

	Calibration(Composite parent, String title, String steps) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(SPACE_PX, SPACE_PX).applyTo(this);
		Label heading = new Label(this, SWT.NONE);
		heading.setText(title);
		heading.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		Label words = new Label(this, SWT.WRAP);
		words.setText(steps);
		GridDataFactory.fillDefaults().hint(NOTE_PX, SWT.DEFAULT).applyTo(words);
	}

	/** A grid of three columns for rows. */
	final Composite grid() {
		Composite grid = new Composite(this, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(3).spacing(SPACE_PX, SPACE_PX / 2).applyTo(grid);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(grid);
		return grid;
	}

	final Button push(Composite parent, String text, Runnable action) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> action.run());
		return button;
	}

	/** Result and button at the end. */
	final void end(String keepText, Runnable action) {
		result = new Label(this, SWT.WRAP);
		GridDataFactory.fillDefaults().hint(NOTE_PX, SWT.DEFAULT).applyTo(result);
		keep = push(this, keepText, action);
		keep.setEnabled(false);
	}

	final void say(String text, boolean wrong, boolean canKeep) {
		result.setForeground(wrong ? ThemeColour.FINDING_MESSAGE.colour() : null);
		result.setText(text);
		keep.setEnabled(canKeep && StudioDesk.get().canKeep());
		requestLayout();
	}

	static String number(double value, int decimals) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMinimumFractionDigits(decimals);
		format.setMaximumFractionDigits(decimals);
		return Double.isFinite(value) ? format.format(value) : Messages.Calibration_unknown;
	}
}
