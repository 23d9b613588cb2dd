package org.frisket.ui.sheets.internal.run;

import java.util.List;
import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.frisket.geometry.options.Option;
import org.frisket.material.tools.Machine;
import org.frisket.run.RunOptions;
import org.frisket.run.Workshop;
import org.frisket.ui.bench.internal.options.OptionForm;

/** Beside the picture of a run: its legs, what it takes, how it is to be worked, and what can be done with it. */
final class RunSide extends ScrolledComposite {

	/** What is asked for here. */
	interface Client {

		/** Go to the beginning of a leg. */
		void leg(int index);

		/** Another machine, or other options, all of them right. */
		void setupChanged(Machine machine, Map<String, String> options);

		void writeSheet();

		void export();

		void record();
	}

	private static final int SPACE_PX = 8;
	private static final int TABLE_PX = 130;
	/** A pause in typing, after which a run is worked out anew. */
	private static final int TYPED_MS = 400;

	private final Client client;
	private final Composite page;
	private final Label totals;
	private final LegTable legs;
	private final RunNotices notices;
	private final Label cost;
	private final Combo machine;
	private final OptionForm options;
	private final Button sheet;
	private List<Machine> machines = List.of();
	private List<Option> shownOptions = List.of();
	private final Runnable typed = this::setup;

	RunSide(Composite parent, Client client) {
		super(parent, SWT.V_SCROLL);
		this.client = client;
		setExpandHorizontal(true);
		setExpandVertical(true);
		page = new Composite(this, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, SPACE_PX).applyTo(page);
		totals = label();
		totals.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		legs = new LegTable(page, client::leg);
		GridDataFactory.fillDefaults().grab(true, false).hint(SPACE_PX, TABLE_PX).applyTo(legs.table());
		notices = new RunNotices(page, false);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(notices);
		cost = label();
		Composite buttons = new Composite(page, SWT.NONE);
		buttons.setLayout(new RowLayout());
		GridDataFactory.fillDefaults().grab(true, false).hint(SPACE_PX, SWT.DEFAULT).applyTo(buttons);
		sheet = button(buttons, Messages.RunSide_sheet, client::writeSheet);
		button(buttons, Messages.RunSide_export, client::export);
		button(buttons, Messages.RunSide_record, client::record);
		Group how = new Group(page, SWT.NONE);
		how.setText(Messages.RunSide_how);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(how);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, SPACE_PX / 2).applyTo(how);
		new Label(how, SWT.NONE).setText(Messages.RunSide_machine);
		machine = new Combo(how, SWT.READ_ONLY);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(machine);
		machine.addListener(SWT.Selection, event -> setup());
		options = new OptionForm(how, RunSetup.memory(), this::optionTyped).stacked();
		GridDataFactory.fillDefaults().grab(true, false).applyTo(options);
		setContent(page);
		page.addListener(SWT.Resize, event -> fit());
		addListener(SWT.Resize, event -> fit());
	}

	private Label label() {
		Label label = new Label(page, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(SPACE_PX, SWT.DEFAULT).applyTo(label);
		return label;
	}

	private static Button button(Composite parent, String text, Runnable action) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> action.run());
		return button;
	}

	private void fit() {
		int width = getClientArea().width;
		setMinHeight(page.computeSize(width, SWT.DEFAULT).y);
	}

	LegTable legs() {
		return legs;
	}

	RunNotices notices() {
		return notices;
	}

	/** Null for none. */
	void show(SheetRun run) {
		totals.setText(run == null ? "" : CostWords.totals(run.playback())); //$NON-NLS-1$
		cost.setText(run == null ? "" : String.join("\n", CostWords.lines(run.cost())).replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
		legs.show(run == null ? null : run.playback());
		notices.show(run);
		sheet.setEnabled(run != null);
		page.layout(true, true);
		fit();
	}

	/** Offers machines, and the options for the one that is chosen. */
	void showSetup(List<Machine> offered, Workshop chosen) {
		if (!offered.equals(machines)) {
			machines = List.copyOf(offered);
			machine.setItems(machines.stream().map(RunSide::name).toArray(String[]::new));
		}
		machine.select(machines.stream().map(Machine::id).toList().indexOf(chosen.machine().id()));
		if (!RunOptions.options(chosen).equals(shownOptions)) {
			shownOptions = RunOptions.options(chosen);
			options.show(RunSetup.ID, () -> shownOptions);
			page.layout(true, true);
			fit();
		}
	}

	private static String name(Machine machine) {
		return machine.id().equals(Machine.plain().id()) ? Messages.RunSide_plainMachine : machine.name();
	}

	private void optionTyped() {
		if (!isDisposed()) {
			getDisplay().timerExec(TYPED_MS, typed);
		}
	}

	private void setup() {
		if (isDisposed() || machine.getSelectionIndex() < 0) {
			return;
		}
		boolean right = options.validate();
		options.requestLayout();
		fit();
		if (right) {
			client.setupChanged(machines.get(machine.getSelectionIndex()), options.values());
		}
	}
}
