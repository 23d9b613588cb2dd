package org.frisket.ui.material.internal.trials;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.material.desk.SheetPlan;
import org.frisket.material.desk.SweepText;
import org.frisket.material.tools.Problem;
import org.frisket.material.trials.Parameter;
import org.frisket.ui.material.internal.machines.FieldNote;

/** The values of one setting: which one, from where to where, in which steps. */
final class SweepRow {

	private static final int FIELD_PX = 44;
	private final String name;
	private final Runnable typed;
	private final Combo parameter;
	private final Text from;
	private final Text to;
	private final Text step;
	private final Label unit;
	private final FieldNote note;
	private boolean filling;

	/**
	 * @param parent of two columns
	 * @param name   {@link SheetPlan#ACROSS} or {@link SheetPlan#DOWN}
	 * @param chosen told when another setting is chosen @param typed told of every other change
	 */
	SweepRow(Composite parent, String label, String name, Consumer<SweepRow> chosen, Runnable typed) {
		this.name = name;
		this.typed = typed;
		new Label(parent, SWT.NONE).setText(label);
		parameter = new Combo(parent, SWT.READ_ONLY);
		for (Parameter each : Parameter.values()) {
			parameter.add(SettingsWords.of(each));
		}
		parameter.setData(FieldNote.NAME, name);
		parameter.addListener(SWT.Selection, event -> chosen.accept(this));
		GridDataFactory.fillDefaults().grab(true, false).applyTo(parameter);
		new Label(parent, SWT.NONE);
		Composite values = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(4).spacing(4, 2).applyTo(values);
		from = field(values, Messages.SweepRow_from, SheetPlan.FROM);
		to = field(values, Messages.SweepRow_to, SheetPlan.TO);
		step = field(values, Messages.SweepRow_step, SheetPlan.STEP);
		unit = new Label(values, SWT.NONE);
		GridDataFactory.swtDefaults().span(2, 1).applyTo(unit);
		note = new FieldNote(parent, 1, 1);
	}

	private Text field(Composite parent, String label, String place) {
		new Label(parent, SWT.NONE).setText(label);
		Text text = new Text(parent, SWT.BORDER);
		text.setData(FieldNote.NAME, name + place);
		GridDataFactory.swtDefaults().hint(FIELD_PX, SWT.DEFAULT).applyTo(text);
		text.addListener(SWT.Modify, event -> {
			if (!filling) {
				typed.run();
			}
		});
		return text;
	}

	void show(SweepText sweep, String unitText) {
		filling = true;
		parameter.select(sweep.parameter().ordinal());
		from.setText(sweep.from());
		to.setText(sweep.to());
		step.setText(sweep.step());
		unit.setText(unitText);
		unit.requestLayout();
		filling = false;
	}

	void choose(Parameter chosen) {
		parameter.select(chosen.ordinal());
	}

	SweepText text() {
		return new SweepText(parameter(), from.getText(), to.getText(), step.getText());
	}

	Parameter parameter() {
		return Parameter.values()[Math.max(0, parameter.getSelectionIndex())];
	}

	void say(List<Problem> problems) {
		note.say(problems.stream().filter(problem -> problem.option().startsWith(name)).findFirst().map(Problem::message)
				.orElse("")); //$NON-NLS-1$
	}

	void setEnabled(boolean enabled) {
		parameter.setEnabled(enabled);
		for (Text each : List.of(from, to, step)) {
			each.setEnabled(enabled);
		}
	}
}
