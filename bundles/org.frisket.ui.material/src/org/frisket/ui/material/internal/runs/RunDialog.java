package org.frisket.ui.material.internal.runs;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.frisket.material.StockFamily;
import org.frisket.material.advice.Work;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.Numbering;
import org.frisket.material.desk.RunPlan;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Problem;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.trials.Reorder;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.StockFacts;
import org.frisket.prepare.LineWork;
import org.frisket.ui.OperationName;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.material.internal.ShellRoom;
import org.frisket.ui.material.internal.machines.StudioDesk;
import org.frisket.ui.material.internal.machines.ToolName;
import org.frisket.ui.material.internal.trials.Advising;
import org.frisket.ui.material.internal.trials.SettingsWords;

/**
 * Asks what the job on the bench was cut with, and how it came out. What can be known is filled in: the lines are measured
 * in the job, the settings are those that worked before, or those that are advised.
 */
public final class RunDialog extends Dialog implements StudioDesk.Listener {

	private static final int MARGIN_PX = 12;
	private static final int NOTE_PX = 420;

	private final JobOnBench bench;
	private final Advising advising;
	private LineCount count;
	private RunFields fields;
	private Label note;
	private DeskState state = StudioDesk.get().state();
	private List<LineWork> works = List.of();
	private List<StockFacts> stocks = List.of();
	private List<Tool> tools = List.of();

	RunDialog(Shell parent, JobOnBench bench) {
		super(parent);
		this.bench = bench;
		advising = new Advising(parent.getDisplay(), answer -> fields.propose(answer.advice().settings()));
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.APPLICATION_MODAL);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.RunDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).spacing(MARGIN_PX, MARGIN_PX).applyTo(area);
		note = new Label(area, SWT.WRAP);
		note.setText(Messages.RunDialog_measuring);
		GridDataFactory.fillDefaults().grab(true, false).hint(NOTE_PX, SWT.DEFAULT).applyTo(note);
		fields = new RunFields(area, new RunFields.Client() {
			@Override
			public void workChosen() {
				RunDialog.this.workChosen();
			}

			@Override
			public void setupChosen() {
				RunDialog.this.setupChosen();
			}

			@Override
			public void typed() {
				check();
			}
		});
		GridDataFactory.fillDefaults().grab(true, true).applyTo(fields);
		count = new LineCount(bench, this::counted);
		StudioDesk.get().addListener(this);
		area.addListener(SWT.Dispose, event -> {
			count.stop();
			advising.stop();
			StudioDesk.get().removeListener(this);
		});
		StudioDesk.get().refresh();
		return area;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.RunDialog_keep, true);
		createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
		deskChanged();
	}

	private void counted(List<LineWork> found) {
		works = found;
		note.setText(found.isEmpty() ? Messages.RunDialog_nothing : Messages.RunDialog_how);
		fields.showWorks(found.stream().map(this::words).toList());
		workChosen();
	}

	private String words(LineWork work) {
		String stock = work.stock().isEmpty() ? "" : state.stock(work.stock()).map(each -> each.name()).orElse(work.stock()); //$NON-NLS-1$
		String what = stock.isEmpty() ? OperationName.of(work.kind())
				: NLS.bind(Messages.RunDialog_in, OperationName.of(work.kind()), stock);
		return NLS.bind(Messages.RunDialog_work, what, RunPlan.metres(work.workMm()));
	}

	@Override
	public void deskChanged() {
		state = StudioDesk.get().state();
		stocks = new ArrayList<>();
		List<String> names = new ArrayList<>();
		state.stocks().forEach(stock -> {
			stocks.add(StockFacts.of(stock));
			names.add(stock.name());
		});
		for (StockFamily family : StockFamily.values()) {
			stocks.add(StockFacts.of(family, 0, 0));
			names.add(NLS.bind(Messages.RunDialog_offShelf, SettingsWords.of(family)));
		}
		fields.showStocks(names);
		fields.showMachines(state.offeredMachines().stream()
				.map(each -> each.equals(Machine.plain()) ? Messages.RunDialog_plainMachine : each.name()).toList());
		fields.selectMachine(state.usualMachine().map(machine -> state.offeredMachines().indexOf(machine)).orElse(0));
		if (!works.isEmpty()) {
			fields.showWorks(works.stream().map(this::words).toList());
		}
		workChosen();
	}

	/** The stock, tool and passes are those of the job, as far as it names them. */
	private void workChosen() {
		current().ifPresent(work -> {
			List<String> ids = stocks.stream().map(StockFacts::stock).toList();
			fields.selectStock(work.stock().isEmpty() ? state.stocks().size() : ids.indexOf(work.stock()));
			tools = state.toolsFor(work.kind());
			fields.showTools(tools.stream().map(tool -> state.tools().contains(tool) ? tool.name()
					: NLS.bind(Messages.RunDialog_usualTool, ToolName.of(tool.kind()))).toList());
			fields.selectTool(tools.stream().map(Tool::id).toList().indexOf(work.tool()));
			fields.proposePasses(work.passes());
		});
		setupChosen();
	}

	private void setupChosen() {
		Optional<Work> work = work();
		work.ifPresent(chosen -> {
			fields.showUnits(chosen.machine().pressure().unit(), chosen.machine().speed().unit(),
					chosen.tool().kind() == ToolKind.BLADE);
			Optional<Settings> before = Reorder.of(state.runs(), bench.job().getId(), chosen.stock().stock(), chosen.setup())
					.map(reorder -> reorder.run().settings());
			if (before.isPresent()) {
				advising.stop();
				fields.propose(before.get());
			} else {
				advising.ask(state, chosen, null);
			}
		});
		check();
	}

	private Optional<LineWork> current() {
		return fields.work() < 0 ? Optional.empty() : Optional.of(works.get(fields.work()));
	}

	private Optional<Work> work() {
		return current().filter(line -> fields.tool() >= 0 && fields.machine() >= 0 && fields.stock() >= 0)
				.map(line -> new Work(stocks.get(fields.stock()), state.offeredMachines().get(fields.machine()),
						tools.get(fields.tool()), line.kind()));
	}

	private Optional<RunPlan> plan() {
		return work().map(work -> fields.plan(work, bench.job().getId()));
	}

	private void check() {
		current().ifPresent(line -> fields.proposeMetres(times -> RunPlan.metres(line.mm(times))));
		List<Problem> problems = plan().map(RunPlan::problems).orElse(List.of());
		fields.say(problems);
		ShellRoom.fit(getShell());
		Button keep = getButton(IDialogConstants.OK_ID);
		if (keep != null) {
			keep.setEnabled(plan().isPresent() && problems.isEmpty() && StudioDesk.get().canKeep());
		}
	}

	@Override
	protected void okPressed() {
		RunPlan plan = plan().orElseThrow();
		StudioDesk.get().change(Messages.RunDialog_keeping, settings -> {
			Run run = plan.run(Numbering.next("run", settings.runs().stream().map(Run::id).toList()), Instant.now()); //$NON-NLS-1$
			settings.add(run);
			return run;
		}, run -> super.okPressed(), message -> {
			if (note.isDisposed()) {
				return;
			}
			note.setText(message.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			ShellRoom.fit(getShell());
		});
		getButton(IDialogConstants.OK_ID).setEnabled(false);
	}
}
