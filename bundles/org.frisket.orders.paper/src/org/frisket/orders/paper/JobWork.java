package org.frisket.orders.paper;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.material.Stock;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.run.Costing;
import org.frisket.run.Load;
import org.frisket.run.MachineRun;
import org.frisket.run.Rate;
import org.frisket.run.RunMaker;
import org.frisket.run.Workshop;
import org.frisket.sheets.GuestFiles;
import org.frisket.sheets.JobParts;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.LaidSheets;
import org.frisket.sheets.SheetPart;
import org.frisket.toolpath.RunChoices;

/**
 * A job worked through as far as it goes, for its papers.
 *
 * @param prepared what its elements come to; nothing on its layers if nothing is designed yet
 * @param parts    what has to find room on sheets, one copy of each
 * @param sheets   its sheets with their runs; without any, the job as it lies on the bench if there is something to run
 * @param findings of makeready, of how parts lie and of the runs
 * @param problems guests that could not be read, a sentence each
 */
public record JobWork(PreparedJob prepared, List<SheetPart> parts, List<SheetWork> sheets, List<Finding> findings,
		List<String> problems, Workshop workshop) {

	public JobWork {
		parts = List.copyOf(parts);
		sheets = List.copyOf(sheets);
		findings = List.copyOf(findings);
		problems = List.copyOf(problems);
	}

	/**
	 * How papers are worked out.
	 *
	 * @param rate of the machine's time; empty if nobody has set it
	 */
	public record Means(JobPreparer preparer, LayerLimits limits, Workshop workshop, RunChoices choices, Optional<Rate> rate,
			Tolerance tolerance) {
	}

	/**
	 * @param guests on the sheets of the job, as far as they can be had
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static JobWork of(Job job, GuestFiles.Guests guests, Means means, Monitor monitor) {
		PreparedJob prepared = means.preparer().prepare(job, means.tolerance(), monitor);
		List<Finding> findings = new ArrayList<>(Makeready.findings(prepared, means.limits(), means.tolerance(), monitor));
		List<SheetWork> sheets = new ArrayList<>();
		if (!job.getSheets().isEmpty()) {
			Map<String, PreparedJob> all = guests.prepared(prepared, means.preparer(), means.tolerance(), monitor);
			for (LaidSheet laid : LaidSheets.of(job, all, means.tolerance(), monitor)) {
				findings.addAll(laid.findings());
				sheets.add(run(Optional.of(laid), Load.of(laid), means, monitor));
			}
		} else if (!prepared.visibleBounds().isEmpty()) {
			sheets.add(run(Optional.empty(), Load.bench(prepared), means, monitor));
		}
		sheets.forEach(sheet -> findings.addAll(sheet.run().findings()));
		return new JobWork(prepared, JobParts.of(prepared, false, means.tolerance(), monitor), sheets, findings,
				guests.problems(), means.workshop());
	}

	/**
	 * The same job as far as its design goes: no sheets, no runs, no findings. It is there sooner.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static JobWork designed(Job job, Means means, Monitor monitor) {
		PreparedJob prepared = means.preparer().prepare(job, means.tolerance(), monitor);
		return new JobWork(prepared, JobParts.of(prepared, false, means.tolerance(), monitor), List.of(), List.of(), List.of(),
				means.workshop());
	}

	private static SheetWork run(Optional<LaidSheet> laid, Load load, Means means, Monitor monitor) {
		MachineRun run = RunMaker.of(load, means.workshop(), means.choices(), monitor);
		return new SheetWork(laid, load, run, Costing.of(run, load, means.workshop(), means.rate()));
	}

	/** The same at another price of the machine's time. @param rate empty if nobody has set it */
	public JobWork at(Optional<Rate> rate) {
		return new JobWork(prepared, parts, sheets.stream().map(sheet -> new SheetWork(sheet.laid(), sheet.load(), sheet.run(),
				Costing.of(sheet.run(), sheet.load(), workshop, rate))).toList(), findings, problems, workshop);
	}

	public Job job() {
		return prepared.job();
	}

	/** Whether it is laid on sheets, which hold as many copies as were laid; on the bench lies one copy. */
	public boolean isLaid() {
		return !job().getSheets().isEmpty();
	}

	/** How people call a stock: by its name, else by what the job says. @param id may be null */
	public String stockName(String id) {
		return id == null || id.isBlank() ? Messages.JobWork_noStock : workshop.stock(id).map(Stock::name).orElse(id);
	}

	/** What tells its papers from those of other jobs, and of itself before a change: all that its document says. */
	String identity() throws IOException {
		return new String(JobFile.toBytes(job()), StandardCharsets.UTF_8);
	}

	/** Whether it cannot be made like this. */
	public boolean isBlocked() {
		return findings.stream().anyMatch(Finding::isBlocking);
	}
}
