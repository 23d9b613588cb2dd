package org.frisket.ui.bench.internal.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.frisket.geometry.options.Option;
import org.frisket.material.desk.DeskState;
import org.frisket.material.tools.Machine;
import org.frisket.run.RunOptions;
import org.frisket.run.Workshop;
import org.frisket.ui.bench.internal.options.ChoiceName;

/** For which machine a file is, and how its run was chosen to be worked elsewhere. Seen for formats of machines only. */
public final class MachinePart {

	private final Label label;
	private final Combo choice;
	private final Label under;
	private final Label told;
	/** Ids, as they are listed. */
	private final List<String> ids = new ArrayList<>();
	private String machine;
	private Map<String, String> run;
	private boolean shown = true;

	/**
	 * @param parent  of three columns
	 * @param machine id of it; empty for the one most likely meant
	 * @param run     texts by the name of the run's option
	 */
	public MachinePart(Composite parent, String machine, Map<String, String> run, Runnable changed) {
		this.machine = machine;
		label = new Label(parent, SWT.NONE);
		label.setText(Messages.MachinePart_machine);
		GridDataFactory.swtDefaults().applyTo(label);
		choice = new Combo(parent, SWT.READ_ONLY);
		choice.setData("machine"); //$NON-NLS-1$
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(choice);
		choice.addListener(SWT.Selection, event -> {
			this.machine = ids.get(choice.getSelectionIndex());
			changed.run();
		});
		under = new Label(parent, SWT.NONE);
		GridDataFactory.swtDefaults().applyTo(under);
		told = new Label(parent, SWT.WRAP);
		told.setData("run"); //$NON-NLS-1$
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(0, SWT.DEFAULT).applyTo(told);
		use(machine, run);
	}

	/** The machines of the studio, which have been looked up meanwhile. */
	public void offer(DeskState desk) {
		ids.clear();
		choice.removeAll();
		for (Machine each : desk.offeredMachines()) {
			add(each.id(), each.id().equals(Machine.plain().id()) ? Messages.MachinePart_plain : each.name());
		}
		if (machine.isEmpty()) {
			machine = Workshop.of(desk).machine().id();
		}
		select();
	}

	private void add(String id, String name) {
		ids.add(id);
		choice.add(name);
	}

	/** Other ones, as a preset has them. @param id empty to leave the machine as it is */
	void use(String id, Map<String, String> options) {
		run = Map.copyOf(options);
		if (!id.isEmpty()) {
			machine = id;
		}
		if (!ids.isEmpty()) {
			select();
		}
		told.setText(NLS.bind(Messages.MachinePart_run, words()).replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		show(shown);
	}

	private void select() {
		if (!ids.contains(machine)) {
			// that it is not there is told when the file is written, with the machines there are
			add(machine, machine);
		}
		choice.select(ids.indexOf(machine));
	}

	/** What is not as usual. */
	private String words() {
		return RunOptions.options().stream()
				.filter(option -> !run.getOrDefault(option.name(), option.initial()).equals(option.initial()))
				.map(option -> NLS.bind(Messages.MachinePart_option, option.description(), value(option)))
				.collect(Collectors.joining("; ")); //$NON-NLS-1$
	}

	private String value(Option option) {
		String text = run.get(option.name());
		return option.kind() == Option.Kind.CHOICE ? ChoiceName.of(text) : text;
	}

	public void show(boolean wanted) {
		shown = wanted;
		show(label, wanted);
		show(choice, wanted);
		boolean some = wanted && !words().isEmpty();
		show(under, some);
		show(told, some);
	}

	private static void show(Control control, boolean wanted) {
		control.setVisible(wanted);
		((GridData) control.getLayoutData()).exclude = !wanted;
	}

	/** Id of the machine; empty while it is not known which one is most likely meant. */
	public String machine() {
		return machine;
	}

	/** Texts by the name of the run's option. */
	Map<String, String> run() {
		return run;
	}
}
