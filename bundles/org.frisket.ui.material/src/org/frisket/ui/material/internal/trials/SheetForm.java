package org.frisket.ui.material.internal.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.material.StockFamily;
import org.frisket.material.advice.Work;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.SheetPlan;
import org.frisket.material.desk.SweepText;
import org.frisket.material.desk.TypedNumber;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Problem;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Parameter;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Setup;
import org.frisket.material.trials.SheetLayout;
import org.frisket.material.trials.StockFacts;
import org.frisket.material.trials.Sweep;
import org.frisket.material.trials.TestSheet;
import org.frisket.model.OperationKind;
import org.frisket.ui.OperationName;
import org.frisket.ui.material.internal.machines.FieldNote;
import org.frisket.ui.material.internal.machines.ToolName;

/** What a test sheet is of: stock, machine, tool, operation, and the values of two settings. */
final class SheetForm extends Composite {

	/** What can be tried: all but printing. */
	private static final List<OperationKind> OPERATIONS = List.of(OperationKind.CUT, OperationKind.KISS_CUT,
			OperationKind.CREASE, OperationKind.PERFORATE, OperationKind.DRAW);
	private static final int SPACE_PX = 8;

	private final Runnable workChanged;
	private final Combo stock;
	private final Text weight;
	private final FieldNote weightNote;
	private final Combo machine;
	private final Combo operation;
	private final Combo tool;
	private final SweepRow across;
	private final SweepRow down;
	private final Text size;
	private final FieldNote sizeNote;
	private final FieldNote sheetNote;
	private DeskState state = DeskState.NOTHING;
	private List<StockFacts> stocks = List.of();
	private List<Tool> tools = List.of();
	private final Supplier<Settings> advised;
	/** What nobody chose may be another one when more is known. */
	private boolean stockChosen;
	private boolean machineChosen;
	/** While fields are filled in, nobody types. */
	private boolean filling = true;

	/**
	 * @param workChanged  told when another stock, machine, tool or operation is chosen
	 * @param valueChanged told when a value is typed
	 * @param advised      what is advised for the work as it is
	 */
	SheetForm(Composite parent, Runnable workChanged, Runnable valueChanged, Supplier<Settings> advised) {
		super(parent, SWT.NONE);
		this.workChanged = workChanged;
		this.advised = advised;
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACE_PX, SPACE_PX / 2).applyTo(this);
		stock = combo(Messages.SheetForm_stock, "stock", this::stockChosen); //$NON-NLS-1$
		weight = text(Messages.SheetForm_weight, "weight", () -> this.workChanged.run()); //$NON-NLS-1$
		weightNote = new FieldNote(this, 1, 1);
		machine = combo(Messages.SheetForm_machine, "machine", this::machineChosen); //$NON-NLS-1$
		operation = combo(Messages.SheetForm_operation, "operation", this::operationChosen); //$NON-NLS-1$
		OPERATIONS.forEach(kind -> operation.add(OperationName.of(kind)));
		operation.select(0);
		tool = combo(Messages.SheetForm_tool, "tool", () -> this.workChanged.run()); //$NON-NLS-1$
		across = new SweepRow(this, Messages.SheetForm_across, SheetPlan.ACROSS, row -> propose(row, valueChanged),
				valueChanged);
		down = new SweepRow(this, Messages.SheetForm_down, SheetPlan.DOWN, row -> propose(row, valueChanged),
				valueChanged);
		across.choose(Parameter.PRESSURE);
		down.choose(Parameter.SPEED);
		size = text(Messages.SheetForm_size, SheetPlan.SIZE, valueChanged);
		size.setText(Sweep.plain(SheetLayout.USUAL_SIZE));
		sizeNote = new FieldNote(this, 1, 1);
		sheetNote = new FieldNote(this, 1, 1);
		filling = false;
	}

	private Combo combo(String label, String name, Runnable chosen) {
		new Label(this, SWT.NONE).setText(label);
		Combo combo = new Combo(this, SWT.READ_ONLY);
		combo.setData(FieldNote.NAME, name);
		combo.addListener(SWT.Selection, event -> chosen.run());
		GridDataFactory.fillDefaults().grab(true, false).hint(SPACE_PX, SWT.DEFAULT).applyTo(combo);
		return combo;
	}

	private Text text(String label, String name, Runnable typed) {
		new Label(this, SWT.NONE).setText(label);
		Text text = new Text(this, SWT.BORDER);
		text.setData(FieldNote.NAME, name);
		text.addListener(SWT.Modify, event -> {
			if (!filling) {
				typed.run();
			}
		});
		GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
		return text;
	}

	/** Offers what the studio has now; what was chosen stays so. */
	void show(DeskState now) {
		String stockBefore = !stockChosen ? null : key(stocks.get(stock.getSelectionIndex()));
		String machineBefore = !machineChosen ? null : machine().id();
		state = now;
		stocks = new ArrayList<>();
		stock.removeAll();
		now.stocks().forEach(each -> addStock(StockFacts.of(each), each.name()));
		for (StockFamily family : StockFamily.values()) {
			addStock(StockFacts.of(family, 0, 0), NLS.bind(Messages.SheetForm_offShelf,
					SettingsWords.of(family)));
		}
		stock.select(Math.max(0, stocks.stream().map(SheetForm::key).toList().indexOf(stockBefore)));
		machine.removeAll();
		now.offeredMachines().forEach(each -> machine.add(
				each.equals(Machine.plain()) ? Messages.SheetForm_plainMachine : each.name()));
		machine.select(Math.max(0,
				now.offeredMachines().stream().map(Machine::id).toList().indexOf(machineBefore)));
		showTools();
		showWeight();
	}

	private void addStock(StockFacts facts, String name) {
		stocks.add(facts);
		stock.add(name);
	}

	private static String key(StockFacts facts) {
		return facts.stock().isEmpty() ? facts.family().name() : facts.stock();
	}

	private void showTools() {
		String before = tool.getSelectionIndex() < 0 ? null : tools.get(tool.getSelectionIndex()).id();
		tools = state.toolsFor(operation());
		tool.removeAll();
		boolean own = !state.tools().isEmpty() && state.tools().containsAll(tools);
		tools.forEach(each -> tool.add(own ? each.name()
				: NLS.bind(Messages.SheetForm_usualTool, ToolName.of(each.kind()))));
		tool.select(Math.max(0, tools.stream().map(Tool::id).toList().indexOf(before)));
	}

	private void showWeight() {
		weight.setEnabled(stock.isEnabled() && isOffShelf());
		if (!isOffShelf()) {
			double grammage = stocks.get(stock.getSelectionIndex()).grammage();
			fill(grammage);
		}
	}

	private void fill(double grammage) {
		filling = true;
		weight.setText(grammage > 0 ? Sweep.plain(grammage) : ""); //$NON-NLS-1$
		filling = false;
	}

	private boolean isOffShelf() {
		return stocks.get(Math.max(0, stock.getSelectionIndex())).stock().isEmpty();
	}

	private void stockChosen() {
		stockChosen = true;
		showWeight();
		workChanged.run();
	}

	private void machineChosen() {
		machineChosen = true;
		workChanged.run();
	}

	private void operationChosen() {
		showTools();
		workChanged.run();
	}

	private void propose(SweepRow row, Runnable then) {
		propose(row);
		then.run();
	}

	private void propose(SweepRow row) {
		row.show(SheetPlan.usual(row.parameter(), work(), advised.get()), SheetPlan.unit(row.parameter(), machine()));
	}

	/** Fills in values about what is advised. */
	void propose() {
		propose(across);
		propose(down);
	}

	private OperationKind operation() {
		return OPERATIONS.get(Math.max(0, operation.getSelectionIndex()));
	}

	private Machine machine() {
		return state.offeredMachines().get(Math.max(0, machine.getSelectionIndex()));
	}

	/** What is to be tried, as far as it is chosen: a weight that cannot be read counts as unknown. */
	Work work() {
		StockFacts facts = stocks.get(Math.max(0, stock.getSelectionIndex()));
		if (facts.stock().isEmpty()) {
			facts = StockFacts.of(facts.family(), typedWeight(), 0);
		}
		return new Work(facts, machine(), tools.get(Math.max(0, tool.getSelectionIndex())), operation());
	}

	private double typedWeight() {
		weightNote.say(""); //$NON-NLS-1$
		if (weight.getText().isBlank()) {
			return 0;
		}
		try {
			double grammage = TypedNumber.parse(weight.getText(), "g/m²"); //$NON-NLS-1$
			if (grammage >= 0) {
				return grammage;
			}
			weightNote.say(Messages.SheetForm_weightNegative);
		} catch (IllegalArgumentException e) {
			weightNote.say(e.getMessage());
		}
		return 0;
	}

	SheetPlan plan(Settings base) {
		return new SheetPlan(work(), base, across.text(), down.text(), size.getText());
	}

	/** The size of the shapes as typed; the usual one where it cannot be read. */
	double size() {
		try {
			return plan(advised.get()).sizeMm();
		} catch (IllegalArgumentException e) {
			return SheetLayout.USUAL_SIZE;
		}
	}

	void say(List<Problem> problems) {
		across.say(problems);
		down.say(problems);
		sizeNote.say(message(problems, SheetPlan.SIZE));
		sheetNote.say(message(problems, SheetPlan.SHEET));
	}

	private static String message(List<Problem> problems, String place) {
		return problems.stream().filter(problem -> problem.option().equals(place)).findFirst().map(Problem::message)
				.orElse(""); //$NON-NLS-1$
	}

	/** Shows what a sheet was made with; nothing of that can be changed. */
	void fix(TestSheet sheet) {
		int which = stocks.stream().map(SheetForm::key).toList().indexOf(key(sheet.stock()));
		stock.select(Math.max(0, which));
		fill(sheet.stock().grammage());
		int on = state.offeredMachines().stream().map(Machine::id).toList().indexOf(sheet.setup().machine());
		// of a machine that was taken away, nothing but its steps is known
		machine.select(on < 0 ? machine.getItemCount() - 1 : on);
		operation.select(Math.max(0, OPERATIONS.indexOf(sheet.setup().operation())));
		showTools();
		if (tools.stream().noneMatch(each -> each.id().equals(sheet.setup().tool()))) {
			addGone(sheet.setup());
		}
		tool.select(tools.stream().map(Tool::id).toList().indexOf(sheet.setup().tool()));
		show(across, sheet.across());
		show(down, sheet.down());
		setFixed(true);
	}

	/** Of a tool that was taken away, nothing but its id is known. */
	private void addGone(Setup setup) {
		tools = new ArrayList<>(tools);
		tools.add(ToolOptions.tool(ToolKind.usual(setup.operation()).orElseThrow(), setup.tool(),
				Map.of("name", setup.tool()))); //$NON-NLS-1$
		tool.add(setup.tool());
	}

	private void show(SweepRow row, Sweep sweep) {
		List<Double> values = sweep.values();
		double step = values.size() < 2 ? 1 : values.get(1) - values.get(0);
		row.show(new SweepText(sweep.parameter(), Sweep.plain(values.get(0)), Sweep.plain(values.get(values.size() - 1)),
				Sweep.plain(step)), SheetPlan.unit(sweep.parameter(), machine()));
	}

	void setFixed(boolean fixed) {
		for (Control each : List.of(stock, machine, operation, tool)) {
			each.setEnabled(!fixed);
		}
		across.setEnabled(!fixed);
		down.setEnabled(!fixed);
		weight.setEnabled(!fixed && isOffShelf());
		say(List.of());
	}

	@Override
	public boolean setFocus() {
		return stock.setFocus();
	}
}
