package org.frisket.ui.bench.internal.editor;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.PlacedBench.Choice;

/** A line above the bench that says what has happened to the job where it is kept, and offers what can be done. */
final class NoticeBar extends Composite {

	private static final int MARGIN_PX = 8;
	private static final int SPACING_PX = 8;

	private String text = ""; //$NON-NLS-1$

	/** Takes no room until there is something to say. */
	NoticeBar(Composite parent) {
		super(parent, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(this);
		setVisible(false);
	}

	/** A new composite below it that takes the rest of the page. */
	Composite roomBelow() {
		Composite room = new Composite(getParent(), SWT.NONE);
		room.setLayout(new FillLayout());
		GridDataFactory.fillDefaults().grab(true, true).applyTo(room);
		return room;
	}

	/** Says something in place of what it said before. @param choices ways on; the bar is gone when one is taken */
	void show(String newText, List<Choice> choices) {
		clear();
		text = newText;
		setBackground(ThemeColour.BENCH_TAG.colour());
		GridLayoutFactory.fillDefaults().numColumns(1 + choices.size()).margins(MARGIN_PX, MARGIN_PX)
				.spacing(SPACING_PX, 0).applyTo(this);
		Label label = new Label(this, SWT.WRAP);
		label.setText(newText);
		label.setBackground(getBackground());
		label.setForeground(ThemeColour.BENCH_TAG_TEXT.colour());
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(label);
		for (Choice choice : choices) {
			Button button = new Button(this, SWT.PUSH);
			button.setText(choice.label());
			button.addListener(SWT.Selection, event -> take(choice));
		}
		reveal(true);
	}

	private void take(Choice choice) {
		hide();
		choice.action().run();
	}

	void hide() {
		clear();
		reveal(false);
	}

	private void clear() {
		text = ""; //$NON-NLS-1$
		for (Control child : getChildren()) {
			child.dispose();
		}
	}

	private void reveal(boolean shown) {
		((GridData) getLayoutData()).exclude = !shown;
		setVisible(shown);
		getParent().layout(true, true);
	}

	/** What it says; empty if nothing. */
	String text() {
		return text;
	}
}
