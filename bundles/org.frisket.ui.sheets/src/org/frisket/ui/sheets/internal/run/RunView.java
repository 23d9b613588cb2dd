package org.frisket.ui.sheets.internal.run;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.LongSupplier;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.handlers.IHandlerService;
import org.frisket.material.desk.DeskState;
import org.frisket.material.tools.Machine;
import org.frisket.model.Sheet;
import org.frisket.run.Workshop;
import org.frisket.run.play.Player;
import org.frisket.ui.bench.ExportStart;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.material.internal.machines.StudioDesk;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.BenchView;

/** The run of a sheet of the job on the bench in front, to be watched before the machine does it. */
public final class RunView extends BenchView implements StudioDesk.Listener, RunPage.Client, RunActions.Client {

	public static final String ID = Views.RUN_ID;

	private static final String RECORD_ID = "org.frisket.ui.material.command.run"; //$NON-NLS-1$
	/** What an arrow moves in time: this share of the run, but a second at least. */
	private static final int STEPS = 200;

	private final Player player = new Player();
	private final RunActions actions = new RunActions(player, this);
	private RunKeys keys;
	private Ticker ticker;
	private RunPage page;
	private BenchRun bench;
	private Runnable unlook;
	private SheetRun shown;
	private String said = ""; //$NON-NLS-1$
	/** Of the sheet that was chosen last. */
	private String sheet = ""; //$NON-NLS-1$

	@Override
	protected Control createContent(Composite parent) {
		keys = new RunKeys(getSite());
		page = new RunPage(parent, player, actions, keys, this);
		ticker = new Ticker(page, elapsed -> {
			player.advance(elapsed);
			if (player.isPlaying()) {
				page.tick();
			} else {
				moved();
			}
		});
		StudioDesk.get().addListener(this);
		return page;
	}

	@Override
	protected void benchChanged() {
		if (unlook != null) {
			unlook.run();
			unlook = null;
		}
		JobOnBench front = bench();
		bench = front == null ? null : BenchRun.of(front);
		forget();
		if (bench != null) {
			unlook = bench.look(this::runChanged);
		}
		deskChanged();
		runChanged();
	}

	private void forget() {
		shown = null;
		player.show(null);
		page.show(null);
	}

	@Override
	public void deskChanged() {
		DeskState desk = StudioDesk.get().state();
		page.side().showSetup(desk.offeredMachines(), RunSetup.workshop(desk));
		if (bench != null && bench.isUpToDate()) {
			bench.ask();
		}
	}

	private void runChanged() {
		if (bench == null) {
			showNote(Messages.RunView_noJob);
			return;
		}
		page.showWork(bench.isWorking() ? (int) (100 * bench.progress()) : -1, bench.trouble());
		List<SheetRun> runs = bench.runs();
		if (runs.isEmpty()) {
			forget();
		} else {
			int index = Math.max(0, runs.stream().map(SheetRun::sheet).toList().indexOf(sheet));
			page.showSheets(runs.stream().map(SheetRun::name).toList(), index);
			show(runs.get(index));
		}
		boolean empty = bench.isUpToDate() && bench.trouble().isEmpty()
				&& runs.stream().allMatch(run -> run.playback().size() == 0);
		if (empty) {
			showNote(Messages.RunView_empty);
		} else {
			showContent();
		}
	}

	private void show(SheetRun run) {
		if (run == shown) {
			return;
		}
		boolean same = shown != null && shown.sheet().equals(run.sheet());
		shown = run;
		if (same) {
			player.replace(run.playback());
		} else {
			player.show(run.playback());
		}
		page.show(run);
		moved();
	}

	@Override
	public void pictureChanged() {
		// the unit may be another one; the run is told by itself
		page.canvas().redraw();
	}

	@Override
	public void moved() {
		if (player.isPlaying()) {
			ticker.start();
		} else {
			ticker.stop();
		}
		page.canvas().showTravel(actions.isTravelShown());
		page.refresh();
	}

	@Override
	public void seek(double seconds) {
		player.pause();
		player.seek(seconds);
		moved();
	}

	@Override
	public boolean key(int code) {
		if (player.playback() == null) {
			return false;
		}
		double step = Math.max(1, player.playback().seconds() / STEPS);
		switch (code) {
		case SWT.ARROW_RIGHT -> seek(player.seconds() + step);
		case SWT.ARROW_LEFT -> seek(player.seconds() - step);
		case SWT.HOME -> seek(0);
		case SWT.END -> seek(player.playback().seconds());
		default -> {
			return false;
		}
		}
		return true;
	}

	@Override
	public void listens(boolean now) {
		keys.listen(now);
	}

	@Override
	public String words() {
		return page.words();
	}

	@Override
	public void leg(int index) {
		if (shown != null && index >= 0) {
			seek(shown.playback().legs().get(index).from());
		}
	}

	@Override
	public void sheet(int index) {
		if (bench != null && index >= 0) {
			sheet = bench.runs().get(index).sheet();
			runChanged();
		}
	}

	@Override
	public void stopOrBegin() {
		if (bench != null && bench.isWorking()) {
			bench.cancel();
		} else if (bench != null) {
			bench.ask();
		}
	}

	@Override
	public void setupChanged(Machine machine, Map<String, String> options) {
		RunSetup.keep(machine);
		RunSetup.keep(options);
		page.side().showSetup(StudioDesk.get().state().offeredMachines(), RunSetup.workshop(StudioDesk.get().state()));
		if (bench != null) {
			bench.ask();
		}
	}

	@Override
	public void writeSheet() {
		if (shown != null) {
			RunSheetFile.ask(getSite().getShell(), shown).ifPresent(this::writeSheet);
		}
	}

	/** Writes the run sheet there; the status line says what came of it. */
	public void writeSheet(Path file) {
		RunSheetFile.write(page.getDisplay(), file, shown, this::say);
	}

	private void say(String message) {
		said = message;
		if (!page.isDisposed()) {
			getViewSite().getActionBars().getStatusLineManager().setMessage(message);
		}
	}

	@Override
	public void export() {
		if (bench != null) {
			Workshop workshop = RunSetup.workshop(StudioDesk.get().state());
			List<String> sheets = bench().job().getSheets().stream().map(Sheet::getId).toList();
			new ExportStart(true, shown == null ? -1 : sheets.indexOf(shown.sheet()) + 1, workshop.machine().id(),
					RunSetup.texts(workshop)).ask(getSite().getPage());
		}
	}

	@Override
	public void record() {
		execute(RECORD_ID);
	}

	private void execute(String command) {
		try {
			getSite().getService(IHandlerService.class).executeCommand(command, null);
		} catch (CommandException e) {
			ILog.of(RunView.class).error(e.getMessage(), e);
		}
	}

	/** What was said last in the status line of what was written. */
	public String said() {
		return said;
	}

	/** What keys and buttons do here. */
	public RunActions actions() {
		return actions;
	}

	/** What goes through the run. */
	public Player player() {
		return player;
	}

	/** Has time go by as somebody else counts it. @param nanos nanoseconds */
	public void useClock(LongSupplier nanos) {
		ticker.useClock(nanos);
	}

	/** Whether what is shown is that of the job as it is now. */
	public boolean isUpToDate() {
		return bench == null || bench.isUpToDate();
	}

	public RunCanvas canvas() {
		return page.canvas();
	}

	public ScrubBar scrub() {
		return page.scrub();
	}

	/** Everything that is to be minded, the gravest first. */
	public List<String> notices() {
		return page.side().notices().words();
	}

	@Override
	public void dispose() {
		StudioDesk.get().removeListener(this);
		if (unlook != null) {
			unlook.run();
		}
		if (keys != null) {
			keys.listen(false);
		}
		super.dispose();
	}
}
