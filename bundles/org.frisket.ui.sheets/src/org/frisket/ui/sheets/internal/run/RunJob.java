package org.frisket.ui.sheets.internal.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.OptionValues;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.run.Costing;
import org.frisket.run.Load;
import org.frisket.run.MachineRun;
import org.frisket.run.Rate;
import org.frisket.run.RunMaker;
import org.frisket.run.RunOptions;
import org.frisket.run.Workshop;
import org.frisket.run.play.Playback;
import org.frisket.sheets.GuestFiles;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.LaidSheets;
import org.frisket.sheets.SheetName;
import org.frisket.studio.Studio;

/** Works out the runs of all sheets of a job; of one without sheets, that of the job as it lies on the bench. */
final class RunJob extends Job {

	/** What is told, on the job's own thread; one of the last three ends it. */
	interface Client {

		/** @param fraction how much is done, from 0 to 1 */
		void progress(double fraction);

		void done(List<SheetRun> runs);

		void failed(String message);

		void cancelled();
	}

	/** Of paper round a job that lies on the bench. */
	private static final double MARGIN_MM = 5;

	/**
	 * What is asked.
	 *
	 * @param host     a copy of the job, which nobody changes any more
	 * @param file     of it, beside which its guests are; null for none
	 * @param prepared the job worked through
	 */
	record Question(org.frisket.model.Job host, Path file, PreparedJob prepared) {
	}

	private final Question question;
	private final Workshop workshop;
	private final OptionValues values;
	private final Client client;

	/** @param values of the options for the workshop */
	RunJob(Question question, Workshop workshop, OptionValues values, Client client) {
		super(Messages.RunJob_name);
		this.question = question;
		this.workshop = RunOptions.workshop(workshop, values);
		this.values = values;
		this.client = client;
		setSystem(true);
		setPriority(DECORATE);
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		try {
			client.done(runs(monitor));
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			client.cancelled();
			return Status.CANCEL_STATUS;
		} catch (IllegalArgumentException e) {
			client.failed(e.getMessage());
		} catch (RuntimeException | LinkageError e) {
			ILog.of(RunJob.class).error(e.toString(), e);
			client.failed(NLS.bind(Messages.RunJob_failed, e));
		}
		return Status.OK_STATUS;
	}

	private List<SheetRun> runs(IProgressMonitor monitor) {
		List<SheetRun> runs = new ArrayList<>();
		PreparedJob prepared = question.prepared();
		if (question.host().getSheets().isEmpty()) {
			Load load = Load.bench(prepared);
			runs.add(run("", Messages.RunJob_bench, load, load.page().grown(MARGIN_MM), List.of(), part(monitor, 0, 1))); //$NON-NLS-1$
			return runs;
		}
		GuestFiles.Guests guests = GuestFiles.load(question.host(), question.file());
		Map<String, PreparedJob> jobs = guests.prepared(prepared, new JobPreparer(FontLibraries.installed()), Tolerance.DEFAULT,
				part(monitor, 0, 0));
		List<LaidSheet> laid = LaidSheets.of(question.host(), jobs, Tolerance.DEFAULT, part(monitor, 0, 0));
		for (int i = 0; i < laid.size(); i++) {
			LaidSheet each = laid.get(i);
			Load load = Load.of(each);
			runs.add(run(each.sheet().getId(), SheetName.of(each.sheet()), load, load.page(), findings(each, guests.problems()),
					part(monitor, (double) i / laid.size(), (i + 1.0) / laid.size())));
		}
		return runs;
	}

	/** @param problems why guests could not be read */
	private static List<Finding> findings(LaidSheet laid, List<String> problems) {
		List<Finding> findings = new ArrayList<>(laid.findings());
		if (!laid.missing().isEmpty()) {
			findings.add(0, Finding.plain("part-missing", Severity.CAUTION, laid.sheet().getId(), //$NON-NLS-1$
					new Point(0, 0), NLS.bind(Messages.RunJob_missing, laid.missing().size()),
					problems.isEmpty() ? Messages.RunJob_missingCure : String.join(" ", problems))); //$NON-NLS-1$
		}
		return findings;
	}

	private SheetRun run(String id, String name, Load load, Bounds page, List<Finding> about, Monitor monitor) {
		MachineRun run = RunMaker.of(load, workshop, RunOptions.choices(values), monitor);
		List<Finding> findings = new ArrayList<>(run.findings());
		findings.addAll(about);
		findings.sort(Comparator.comparing(Finding::severity));
		return new SheetRun(id, name, load.content(), page, Playback.of(run, monitor),
				Costing.of(run, load, workshop, rate()), findings);
	}

	/** None where it cannot be read: who runs a sheet can do without the price of an hour. */
	private static Optional<Rate> rate() {
		try {
			return Rate.of(Studio.folder());
		} catch (IOException | IllegalArgumentException e) {
			ILog.of(RunJob.class).warn(e.getMessage(), e);
			return Optional.empty();
		}
	}

	private Monitor part(IProgressMonitor monitor, double from, double to) {
		return new Monitor() {

			@Override
			public boolean isCancelled() {
				return monitor.isCanceled();
			}

			@Override
			public void worked(double fraction) {
				client.progress(from + (to - from) * fraction);
			}
		};
	}
}
