package org.frisket.ui.sheets.internal.run;

import java.lang.ref.WeakReference;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.swt.widgets.Display;
import org.frisket.model.JobHome;
import org.frisket.run.Workshop;
import org.frisket.run.play.Playback;
import org.frisket.run.play.RunWords;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.material.internal.machines.StudioDesk;
import org.frisket.ui.views.RunNote;

/**
 * The runs of the job on a bench, worked out off the UI thread whenever the job was worked through: always for sheets, and
 * for a job without sheets while somebody looks. There is one for each bench. Only for the UI thread.
 */
public final class BenchRun implements JobOnBench.Listener, RunNote {

	/** The bench holds its run as a listener; a run that was held here would hold the bench. */
	private static final Map<JobOnBench, WeakReference<BenchRun>> ALL = new WeakHashMap<>();

	private final JobOnBench bench;
	private final Display display = Display.getCurrent();
	private final List<Runnable> watchers = new CopyOnWriteArrayList<>();
	private int looking;
	private List<SheetRun> runs = List.of();
	private RunJob asked;
	private double progress;
	private String trouble = ""; //$NON-NLS-1$
	private boolean stale = true;
	private boolean waitsForDesk;

	private BenchRun(JobOnBench bench) {
		this.bench = bench;
	}

	/** That of a bench. */
	static BenchRun of(JobOnBench bench) {
		WeakReference<BenchRun> known = ALL.get(bench);
		BenchRun run = known == null ? null : known.get();
		if (run == null) {
			run = new BenchRun(bench);
			ALL.put(bench, new WeakReference<>(run));
			bench.addListener(run);
			run.pictureChanged();
		}
		return run;
	}

	/** One for each sheet, as they were worked out last; out of date unless {@link #isUpToDate()}. */
	List<SheetRun> runs() {
		return runs;
	}

	Optional<SheetRun> run(String sheet) {
		return runs.stream().filter(run -> run.sheet().equals(sheet)).findFirst();
	}

	/** Whether runs are worked out just now. */
	boolean isWorking() {
		return asked != null;
	}

	/** How much of it is done, from 0 to 1. */
	double progress() {
		return progress;
	}

	/** Why there are none; empty if there are. */
	String trouble() {
		return trouble;
	}

	@Override
	public boolean isUpToDate() {
		return !stale && asked == null && bench.isUpToDate();
	}

	/** Somebody looks from now on, sheets or not. @return ends it */
	Runnable look(Runnable changed) {
		looking++;
		Runnable unwatch = watch(changed);
		if (stale || runs.isEmpty()) {
			pictureChanged();
		}
		return () -> {
			looking--;
			unwatch.run();
		};
	}

	@Override
	public Runnable watch(Runnable changed) {
		watchers.add(changed);
		return () -> watchers.remove(changed);
	}

	@Override
	public void jobChanged() {
		stale = true;
		stop();
		tell();
	}

	@Override
	public void pictureChanged() {
		if (!bench.isUpToDate() || bench.prepared().isEmpty()) {
			return;
		}
		if (bench.job().getSheets().isEmpty() && looking == 0) {
			stop();
			runs = List.of();
			stale = true;
			tell();
		} else if (!StudioDesk.get().isKnown()) {
			askWhenDeskIsKnown();
		} else if (stale && asked == null) {
			ask();
		}
	}

	/** Works them out anew, as the machine or its options are others now. */
	void ask() {
		stop();
		if (!bench.isUpToDate() || bench.prepared().isEmpty()) {
			stale = true;
			return;
		}
		progress = 0;
		RunJob[] job = new RunJob[1];
		Workshop workshop = RunSetup.workshop(StudioDesk.get().state());
		RunJob.Question question = new RunJob.Question(JobHome.copy(bench.job()), Bench.fileOf(bench),
				bench.prepared().get());
		job[0] = new RunJob(question, workshop, RunSetup.values(workshop), new Answers(job));
		asked = job[0];
		asked.schedule();
		tell();
	}

	private void askWhenDeskIsKnown() {
		if (!waitsForDesk) {
			waitsForDesk = true;
			StudioDesk desk = StudioDesk.get();
			desk.addListener(new StudioDesk.Listener() {
				@Override
				public void deskChanged() {
					waitsForDesk = false;
					desk.removeListener(this);
					pictureChanged();
				}
			});
			desk.refresh();
		}
	}

	/** Gives up what is worked out just now; what was known before stays, out of date. */
	void stop() {
		if (asked != null) {
			asked.cancel();
			asked = null;
		}
	}

	/** The same, for somebody who did not want to wait. */
	void cancel() {
		stop();
		stale = true;
		trouble = Messages.BenchRun_cancelled;
		tell();
	}

	private void tell() {
		watchers.forEach(Runnable::run);
	}

	/** What comes from the thread that works the runs out; only the last question is answered. */
	private final class Answers implements RunJob.Client {

		private final RunJob[] job;
		private int percent;

		Answers(RunJob[] job) {
			this.job = job;
		}

		@Override
		public void progress(double fraction) {
			int now = (int) (100 * fraction);
			if (now != percent) {
				percent = now;
				answer(() -> progress = fraction);
			}
		}

		@Override
		public void done(List<SheetRun> found) {
			answer(() -> {
				runs = List.copyOf(found);
				stale = false;
				trouble = ""; //$NON-NLS-1$
				asked = null;
			});
		}

		@Override
		public void failed(String message) {
			answer(() -> {
				runs = List.of();
				stale = false;
				trouble = message;
				asked = null;
			});
		}

		@Override
		public void cancelled() {
			// whoever cancelled it knows
		}

		private void answer(Runnable news) {
			if (!display.isDisposed()) {
				display.asyncExec(() -> {
					if (asked == job[0]) {
						news.run();
						tell();
					}
				});
			}
		}
	}

	@Override
	public String words() {
		if (bench.job().getSheets().isEmpty() || runs.stream().allMatch(run -> run.playback().size() == 0)) {
			return ""; //$NON-NLS-1$
		}
		double seconds = runs.stream().map(SheetRun::playback).mapToDouble(Playback::seconds).sum();
		int stops = runs.stream().map(SheetRun::playback).mapToInt(Playback::stops).sum();
		return stops == 0 ? RunWords.duration(seconds)
				: RunWords.duration(seconds) + ", " + RunWords.stops(stops); //$NON-NLS-1$
	}
}
