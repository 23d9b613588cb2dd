package org.frisket.ui.material.internal.machines;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.frisket.material.calibration.Estimate;
import org.frisket.material.calibration.OffsetSheet;
import org.frisket.material.desk.OffsetAnswers;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.Problem;
import org.frisket.model.Job;

/** Finds the offset of a blade: a sheet of corners and circles, and what is read from it. */
final class OffsetPart extends Calibration {

	private static final String CELLS = "7"; //$NON-NLS-1$
	private static final String STEP = "0.05 mm"; //$NON-NLS-1$

	private final Consumer<Job> opener;
	private final CalibrationRow cells;
	private final CalibrationRow step;
	private final Button open;
	private final Composite readings;
	private final List<CalibrationRow> misses = new ArrayList<>();
	private final List<Button> best = new ArrayList<>();
	private Blade blade;
	private OffsetSheet sheet;

	/** @param opener lays the sheet on a bench @param keeper keeps a blade with another offset */
	OffsetPart(Composite parent, Consumer<Job> opener, Consumer<Blade> keeper) {
		super(parent, Messages.OffsetPart_title, Messages.OffsetPart_steps);
		this.opener = opener;
		Composite plan = grid();
		cells = new CalibrationRow(plan, Messages.OffsetPart_cells, "cells", CELLS, this::planned); //$NON-NLS-1$
		step = new CalibrationRow(plan, Messages.OffsetPart_step, "step", STEP, this::planned); //$NON-NLS-1$
		open = push(this, Messages.OffsetPart_open, () -> this.opener.accept(sheet.job()));
		readings = grid();
		end(Messages.OffsetPart_keep, () -> keeper.accept(answers().correct(blade)));
	}

	void show(Blade shown) {
		boolean same = blade != null && blade.id().equals(shown.id()) && blade.offset() == shown.offset();
		blade = shown;
		if (!same) {
			planned();
		}
	}

	private void planned() {
		if (blade == null) {
			return;
		}
		try {
			OffsetSheet planned = OffsetAnswers.sheet(blade, step.text(), cells.text());
			step.say(""); //$NON-NLS-1$
			if (!planned.equals(sheet)) {
				sheet = planned;
				makeReadings();
			}
			open.setEnabled(true);
			read();
		} catch (IllegalArgumentException e) {
			step.say(e.getMessage());
			open.setEnabled(false);
		}
		requestLayout();
	}

	private void makeReadings() {
		for (Control child : readings.getChildren()) {
			child.dispose();
		}
		misses.clear();
		best.clear();
		for (String head : List.of(Messages.OffsetPart_cell, Messages.OffsetPart_miss, Messages.OffsetPart_best)) {
			new Label(readings, SWT.NONE).setText(head);
		}
		for (int i = 0; i < sheet.offsets().size(); i++) {
			misses.add(new CalibrationRow(readings, NLS.bind(Messages.OffsetPart_cellOf, i + 1,
					number(sheet.offsets().get(i), 2)), OffsetAnswers.MISS + i, "", this::read)); //$NON-NLS-1$
			Composite cell = (Composite) readings.getChildren()[readings.getChildren().length - 1];
			Button button = new Button(cell, SWT.RADIO);
			button.setText(Messages.OffsetPart_thisOne);
			button.moveAbove(null);
			GridDataFactory.swtDefaults().applyTo(button);
			int which = i;
			button.addListener(SWT.Selection, event -> {
				// each stands in a cell of its own, so that they do not know of each other
				best.forEach(other -> other.setSelection(other == best.get(which)));
				read();
			});
			best.add(button);
		}
		readings.requestLayout();
	}

	private OffsetAnswers answers() {
		int chosen = -1;
		for (int i = 0; i < best.size(); i++) {
			chosen = best.get(i).getSelection() ? i : chosen;
		}
		return new OffsetAnswers(sheet, misses.stream().map(CalibrationRow::text).toList(), chosen);
	}

	private void read() {
		OffsetAnswers answers = answers();
		List<Problem> problems = answers.problems();
		for (int i = 0; i < misses.size(); i++) {
			String name = OffsetAnswers.MISS + i;
			misses.get(i).say(problems.stream().filter(problem -> problem.option().equals(name)).findFirst()
					.map(Problem::message).orElse("")); //$NON-NLS-1$
		}
		if (answers.isEmpty()) {
			say(Messages.OffsetPart_nothing, false, false);
		} else if (problems.isEmpty()) {
			Estimate found = answers.estimate();
			say(NLS.bind(Messages.OffsetPart_result, number(found.value(), 3), number(found.error(), 3)), false, true);
		} else {
			say(problems.stream().filter(problem -> problem.option().equals(OffsetAnswers.RESULT)).findFirst()
					.map(Problem::message).orElse(""), true, false); //$NON-NLS-1$
		}
	}
}
