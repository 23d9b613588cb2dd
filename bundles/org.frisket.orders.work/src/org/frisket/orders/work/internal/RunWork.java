package org.frisket.orders.work.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.Job;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.run.Load;
import org.frisket.run.MachineRun;
import org.frisket.run.RunMaker;
import org.frisket.run.RunOptions;
import org.frisket.run.Workshop;
import org.frisket.sheets.GuestFiles;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.LaidSheets;
import org.frisket.studio.StudioFolder;

/** What a machine does with the sheets of a layout, run as is usual. */
public final class RunWork {

	private RunWork() {
	}

	/** Of a layout of jobs of the order book, which are read; a run for each sheet. */
	static List<MachineRun> of(Job layout, StudioFolder studio, Workshop workshop, JobPreparer preparer) {
		Map<String, PreparedJob> jobs = new LinkedHashMap<>();
		jobs.put(layout.getId(), preparer.prepare(layout, Tolerance.DEFAULT, Monitor.NONE));
		GuestFiles.load(layout, null, GuestFiles.Shelf.of(studio)).jobs()
				.forEach((id, job) -> jobs.put(id, preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE)));
		return of(LaidSheets.of(layout, jobs, Tolerance.DEFAULT, Monitor.NONE), workshop, Monitor.NONE);
	}

	/** @throws java.util.concurrent.CancellationException if the monitor cancels */
	public static List<MachineRun> of(List<LaidSheet> sheets, Workshop workshop, Monitor monitor) {
		List<MachineRun> runs = new ArrayList<>();
		for (LaidSheet sheet : sheets) {
			runs.add(RunMaker.of(Load.of(sheet), workshop,
					RunOptions.choices(OptionValues.defaults(RunOptions.options(workshop))), monitor));
		}
		return runs;
	}
}
