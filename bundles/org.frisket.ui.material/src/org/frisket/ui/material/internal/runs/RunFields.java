package org.frisket.ui.material.internal.runs;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.material.advice.Work;
import org.frisket.material.desk.RunPlan;
import org.frisket.material.tools.Problem;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Sweep;
import org.frisket.material.trials.Verdict;
import org.frisket.ui.material.internal.machines.FieldNote;

/** The fields of a run, with units and what is wrong with each. What was typed is never overwritten by a proposal. */
final class RunFields extends Composite {

	/** Told of what is chosen and typed. */
	interface Client {

		/** Other lines of the job. */
		void workChosen();

		/** Another stock, machine or tool. */
		void setupChosen();

		/** Anything else. */
		void typed();
	}

	private static final int SPACE_PX = 8;
	private static final int FIELD_PX = 200;
	/** Under which a list keeps that a person chose from it. */
	private static final String CHOSEN = "org.frisket.chosen"; //$NON-NLS-1$

	/** A field of a value: who typed last, its unit, and what is wrong. */
	private static final class Value {
		private Text text;
		private Label unit;
		private FieldNote note;
		private boolean typed;
	}

	private final Client client;
	private final Combo work;
	private final Combo stock;
	private final Combo machine;
	private final Combo tool;
	private final Combo verdict;
	private final Text remark;
	private final Map<String, Value> values = new LinkedHashMap<>();
	private boolean filling;

	RunFields(Composite parent, Client client) {
		super(parent, SWT.NONE);
		this.client = client;
		GridLayoutFactory.fillDefaults().numColumns(3).spacing(SPACE_PX, SPACE_PX / 2).applyTo(this);
		work = combo(Messages.RunFields_work, "work", this::workChosen); //$NON-NLS-1$
		stock = combo(Messages.RunFields_stock, "stock", client::setupChosen); //$NON-NLS-1$
		machine = combo(Messages.RunFields_machine, "machine", client::setupChosen); //$NON-NLS-1$
		tool = combo(Messages.RunFields_tool, "tool", client::setupChosen); //$NON-NLS-1$
		value(Messages.RunFields_exposure, RunPlan.EXPOSURE, "mm"); //$NON-NLS-1$
		value(Messages.RunFields_pressure, RunPlan.PRESSURE, ""); //$NON-NLS-1$
		value(Messages.RunFields_speed, RunPlan.SPEED, ""); //$NON-NLS-1$
		value(Messages.RunFields_passes, RunPlan.PASSES, ""); //$NON-NLS-1$
		value(Messages.RunFields_metres, RunPlan.METRES, "m"); //$NON-NLS-1$
		verdict = combo(Messages.RunFields_verdict, "verdict", client::typed); //$NON-NLS-1$
		for (Verdict each : Verdict.values()) {
			verdict.add(each.text());
		}
		verdict.select(0);
		new Label(this, SWT.NONE).setText(Messages.RunFields_remark);
		remark = text("remark"); //$NON-NLS-1$
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(FIELD_PX, SWT.DEFAULT).applyTo(remark);
	}

	private Combo combo(String label, String name, Runnable chosen) {
		new Label(this, SWT.NONE).setText(label);
		Combo combo = new Combo(this, SWT.READ_ONLY);
		combo.setData(FieldNote.NAME, name);
		combo.addListener(SWT.Selection, event -> {
			combo.setData(CHOSEN, Boolean.TRUE);
			chosen.run();
		});
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(FIELD_PX, SWT.DEFAULT).applyTo(combo);
		return combo;
	}

	/** Other lines mostly lie in another stock, and want another tool. */
	private void workChosen() {
		stock.setData(CHOSEN, null);
		tool.setData(CHOSEN, null);
		client.workChosen();
	}

	private Text text(String name) {
		Text text = new Text(this, SWT.BORDER);
		text.setData(FieldNote.NAME, name);
		return text;
	}

	private void value(String label, String name, String unit) {
		Value value = new Value();
		new Label(this, SWT.NONE).setText(label);
		value.text = text(name);
		GridDataFactory.fillDefaults().grab(true, false).hint(FIELD_PX, SWT.DEFAULT).applyTo(value.text);
		value.unit = new Label(this, SWT.NONE);
		value.unit.setText(unit);
		value.note = new FieldNote(this, 1, 2);
		value.text.addListener(SWT.Modify, event -> {
			if (!filling) {
				value.typed = true;
				client.typed();
			}
		});
		values.put(name, value);
	}

	private static void show(Combo combo, List<String> names) {
		String before = combo.getText();
		if (!List.of(combo.getItems()).equals(names)) {
			combo.setItems(names.toArray(String[]::new));
			combo.select(Math.max(0, names.indexOf(before)));
		}
	}

	void showWorks(List<String> names) {
		show(work, names);
	}

	void showStocks(List<String> names) {
		show(stock, names);
	}

	void showMachines(List<String> names) {
		show(machine, names);
	}

	void showTools(List<String> names) {
		show(tool, names);
	}

	void selectStock(int index) {
		select(stock, index);
	}

	void selectMachine(int index) {
		select(machine, index);
	}

	void selectTool(int index) {
		select(tool, index);
	}

	/** What a person chose stays so. @param index below zero for no proposal */
	private static void select(Combo combo, int index) {
		if (index >= 0 && combo.getData(CHOSEN) == null) {
			combo.select(index);
		}
	}

	int work() {
		return work.getSelectionIndex();
	}

	int stock() {
		return stock.getSelectionIndex();
	}

	int machine() {
		return machine.getSelectionIndex();
	}

	int tool() {
		return tool.getSelectionIndex();
	}

	/** @param exposed whether a blade stands out of its holder */
	void showUnits(String pressure, String speed, boolean exposed) {
		values.get(RunPlan.PRESSURE).unit.setText(pressure);
		values.get(RunPlan.SPEED).unit.setText(speed);
		values.get(RunPlan.EXPOSURE).text.setEnabled(exposed);
		if (!exposed) {
			fill(RunPlan.EXPOSURE, ""); //$NON-NLS-1$
		}
		requestLayout();
	}

	/** Fills in what nobody typed; the passes are the job's. */
	void propose(Settings settings) {
		if (isDisposed()) {
			return;
		}
		if (values.get(RunPlan.EXPOSURE).text.isEnabled()) {
			propose(RunPlan.EXPOSURE, Sweep.plain(settings.exposure()));
		}
		propose(RunPlan.PRESSURE, Sweep.plain(settings.pressure()));
		propose(RunPlan.SPEED, Sweep.plain(settings.speed()));
		client.typed();
	}

	void proposePasses(int passes) {
		propose(RunPlan.PASSES, String.valueOf(passes));
	}

	/** @param metres of so many passes */
	void proposeMetres(IntFunction<String> metres) {
		int times;
		try {
			times = plan(null, "").times(); //$NON-NLS-1$
		} catch (IllegalArgumentException notTyped) {
			return;
		}
		propose(RunPlan.METRES, metres.apply(times));
	}

	private void propose(String name, String text) {
		if (!values.get(name).typed) {
			fill(name, text);
		}
	}

	private void fill(String name, String text) {
		Text field = values.get(name).text;
		if (!field.getText().equals(text)) {
			filling = true;
			field.setText(text);
			filling = false;
		}
	}

	private String typed(String name) {
		return values.get(name).text.getText();
	}

	RunPlan plan(Work chosen, String job) {
		return new RunPlan(chosen, job, typed(RunPlan.EXPOSURE), typed(RunPlan.PRESSURE), typed(RunPlan.SPEED),
				typed(RunPlan.PASSES), Verdict.values()[verdict.getSelectionIndex()], typed(RunPlan.METRES),
				remark.getText());
	}

	/** What is not filled in yet is not wrong yet. */
	void say(List<Problem> problems) {
		values.forEach((name, value) -> value.note.say(problems.stream()
				.filter(problem -> problem.option().equals(name) && (value.typed || !value.text.getText().isEmpty()))
				.findFirst().map(Problem::message).orElse(""))); //$NON-NLS-1$
	}
}
