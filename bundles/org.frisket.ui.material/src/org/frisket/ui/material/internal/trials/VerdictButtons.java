package org.frisket.ui.material.internal.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.material.trials.Verdict;
import org.frisket.ui.material.internal.machines.RoomIcon;

/** The signs with their words and keys; a click judges the cell that is looked at. Above them stands that cell in words. */
final class VerdictButtons extends Composite {

	private static final int SPACE_PX = 4;
	private final Label words;
	private final List<Button> buttons = new ArrayList<>();

	VerdictButtons(Composite parent, Consumer<Optional<Verdict>> client) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(0, SPACE_PX).applyTo(this);
		words = new Label(this, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(words);
		Composite row = new Composite(this, SWT.NONE);
		RowLayout layout = new RowLayout();
		layout.marginLeft = 0;
		layout.marginTop = 0;
		layout.marginBottom = 0;
		row.setLayout(layout);
		GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(row);
		for (Verdict verdict : Verdict.values()) {
			add(row, NLS.bind(Messages.VerdictButtons_key, verdict.ordinal() + 1, verdict.text()), RoomIcon.of(verdict),
					() -> client.accept(Optional.of(verdict)));
		}
		add(row, Messages.VerdictButtons_none, RoomIcon.NONE, () -> client.accept(Optional.empty()));
	}

	private void add(Composite row, String text, RoomIcon icon, Runnable action) {
		Button button = new Button(row, SWT.PUSH);
		button.setText(text);
		button.setImage(icon.image(button));
		button.addListener(SWT.Selection, event -> action.run());
		buttons.add(button);
	}

	void show(String text, boolean canJudge) {
		words.setText(text);
		buttons.forEach(button -> button.setEnabled(canJudge));
		requestLayout();
	}
}
