package org.frisket.cli.sheets;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.work.Preparation;
import org.frisket.cli.work.Stocks;
import org.frisket.cli.work.Targets;
import org.frisket.cli.work.WholeFiles;
import org.frisket.editing.layers.SetLayerStock;
import org.frisket.editing.sheets.LaySheets;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.impose.Budget;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.sheets.GuestFiles;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.LaidSheets;
import org.frisket.sheets.Offcuts;
import org.frisket.sheets.imposing.JobImposer;
import org.frisket.sheets.imposing.LayingChoices;
import org.frisket.sheets.imposing.SheetPlan;
import org.frisket.sheets.imposing.Supply;
import org.frisket.sheets.leftovers.Leftovers;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Store;

/** Lays the parts of jobs; the first of them gets the sheets, and the others are its guests. */
record JobLaying(List<Path> files, LayingOptions options, Ways ways, Map<String, String> settings, List<Path> outputs,
		boolean json) {

	/** What only jobs can be told. @param stock of layers that have none; null leaves them so */
	record Ways(boolean apart, boolean byJob, boolean keepOffcuts, String stock) {
	}

	int run(PrintWriter out, PrintWriter notes) throws Refusal {
		long begun = System.nanoTime();
		List<Path> jobFiles = outputs.stream().filter(ImposeVerb::isJob).toList();
		List<Path> others = outputs.stream().filter(each -> !ImposeVerb.isJob(each)).toList();
		Targets.of(outputs);
		if (jobFiles.size() > 1) {
			throw new Refusal("--out: one .frjob file, since its guests are written as seen from it");
		}
		Job host = Preparation.load(files.get(0));
		List<Guest> guests = new ArrayList<>();
		Map<String, Job> jobs = jobs(host, guests, notes);
		if (ways.stock() != null) {
			Stocks.limits(ways.stock(), null, null);
			jobs.values().forEach(this::giveStock);
		}
		LayingChoices choices = choices(host);
		Budget budget = options.budget(choices.seed());
		Map<String, PreparedJob> prepared = prepared(jobs);
		SheetPlan plan = plan(host, prepared, choices, budget);
		if (plan.parts() == 0 && plan.left().isEmpty()) {
			throw new Refusal(files.stream().map(Path::toString).collect(Collectors.joining(", "))
					+ ": there is no part in it to lay; nothing of it is cut, creased, perforated or drawn");
		}
		new LaySheets(host, plan.toSheets(), guests, choices.toLaying()).apply();
		List<LaidSheet> sheets = LaidSheets.of(host, prepared, Tolerance.DEFAULT, Monitor.NONE);
		List<Optional<Bounds>> offcuts = new ArrayList<>();
		sheets.forEach(sheet -> offcuts.add(Offcuts.largest(sheet, Tolerance.DEFAULT, Monitor.NONE)));
		double took = (System.nanoTime() - begun) / 1e9;
		WholeFiles written = new WholeFiles();
		Targets ofJob = Targets.of(jobFiles);
		ofJob.addTo(written, host, prepared.get(host.getId()), Map.of());
		others.forEach(other -> new SheetFiles(sheets, settings).addTo(written, other));
		written.write();
		ofJob.keepFonts(host, notes);
		Map<Integer, String> kept = ways.keepOffcuts() ? keep(sheets, offcuts) : Map.of();
		GangReport report = new GangReport(jobs, plan, sheets, offcuts, kept, took, choices.seed(), written.targets());
		if (json) {
			out.println(report.json());
		} else {
			report.print(out);
		}
		List<Finding> findings = sheets.stream().flatMap(sheet -> sheet.findings().stream()).toList();
		findings.forEach(finding -> notes.println(finding.message()));
		return plan.left().isEmpty() && findings.stream().noneMatch(Finding::isBlocking) ? Status.DONE : Status.BLOCKED;
	}

	/**
	 * The host, the guests it had, and those that come now.
	 *
	 * @param guests takes in what the host is to remember, as seen from where it is now; whoever writes it elsewhere minds that
	 */
	private Map<String, Job> jobs(Job host, List<Guest> guests, PrintWriter notes) throws Refusal {
		Path hostFile = files.get(0);
		Map<String, Job> jobs = new LinkedHashMap<>();
		jobs.put(host.getId(), host);
		GuestFiles.Guests known = GuestFiles.load(host, hostFile);
		known.problems().forEach(notes::println);
		jobs.putAll(known.jobs());
		for (Guest guest : host.getGuests()) {
			Guest copy = EcoreUtil.copy(guest);
			if (known.files().containsKey(guest.getJob())) {
				copy.setFile(GuestFiles.relative(hostFile, known.files().get(guest.getJob())));
			}
			guests.add(copy);
		}
		List<Path> there = known.files().values().stream().map(JobLaying::whole).toList();
		for (Path file : files.subList(1, files.size())) {
			if (!there.contains(whole(file))) {
				Job job = Preparation.load(file);
				Guest guest = GuestFiles.guest(host, guests, hostFile, job, file);
				guests.add(guest);
				jobs.put(guest.getJob(), job);
			}
		}
		return jobs;
	}

	private static Path whole(Path file) {
		return file.toAbsolutePath().normalize();
	}

	private void giveStock(Job job) {
		for (Layer layer : job.getLayers()) {
			SetLayerStock edit = new SetLayerStock(layer, ways.stock());
			if (layer.getStock() == null && edit.canApply()) {
				edit.apply();
			}
		}
	}

	private LayingChoices choices(Job host) throws Refusal {
		try {
			return options.over(host.getLaying(), ways.apart(), ways.byJob());
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	private static Map<String, PreparedJob> prepared(Map<String, Job> jobs) throws Refusal {
		JobPreparer preparer = new JobPreparer(FontLibraries.installed());
		Map<String, PreparedJob> prepared = new LinkedHashMap<>();
		try {
			jobs.forEach((id, job) -> prepared.put(id, preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE)));
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
		return prepared;
	}

	private static SheetPlan plan(Job host, Map<String, PreparedJob> jobs, LayingChoices choices, Budget budget)
			throws Refusal {
		try {
			return JobImposer.lay(host, jobs, choices, Supply.ofStudio(Studio.folder()), budget, better -> {
				// only the best is written
			}, Tolerance.DEFAULT, Monitor.NONE);
		} catch (IOException | IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	/** @return the ids they are kept under, by the number of the sheet */
	private static Map<Integer, String> keep(List<LaidSheet> sheets, List<Optional<Bounds>> offcuts) throws Refusal {
		Map<Integer, String> kept = new HashMap<>();
		try (Store store = Store.open(Studio.folder(), Leftovers.AREA)) {
			Leftovers leftovers = new Leftovers(store);
			for (int i = 0; i < sheets.size(); i++) {
				LaidSheet sheet = sheets.get(i);
				if (sheet.sheet().getLeftover() != null) {
					leftovers.use(sheet.sheet().getLeftover());
				}
				Bounds offcut = offcuts.get(i).filter(Offcuts::isWorthKeeping).orElse(null);
				if (offcut != null) {
					kept.put(i, leftovers.keep(sheet.sheet().getStock(), sheet.sheet().getColour(), offcut.width(),
							offcut.height()).id());
				}
			}
		} catch (IOException e) {
			throw new Refusal(e);
		}
		return kept;
	}
}
