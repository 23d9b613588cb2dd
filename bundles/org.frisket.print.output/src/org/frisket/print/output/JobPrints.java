package org.frisket.print.output;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.print.register.RegisterException;
import org.frisket.sheets.GuestFiles;

/**
 * All sheets of a job with the print and the cuts on them. What lies on them is worked out once for each way to
 * print and remembered; nothing of it is for the UI thread, and nothing for two threads at once.
 */
public final class JobPrints {

	private final Job job;
	private final Map<String, PreparedJob> jobs;
	private final List<String> problems;
	private final Tolerance tolerance;
	private final Map<Boolean, List<SheetFaces>> faces = new HashMap<>();
	/** Of a job that has none. */
	private Optional<Sheet> bare = Optional.empty();
	private PrintOptions options;
	private final Map<Integer, PrintAndCut> sheets = new HashMap<>();

	private JobPrints(Job job, Map<String, PreparedJob> jobs, List<String> problems, Tolerance tolerance) {
		this.job = job;
		this.jobs = jobs;
		this.problems = problems;
		this.tolerance = tolerance;
	}

	/**
	 * Takes its time.
	 *
	 * @param job  that nobody changes any more
	 * @param file where it is kept, so that its guests are found; null if it is in none
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static JobPrints of(Job job, Path file, JobPreparer preparer, Tolerance tolerance, Monitor monitor) {
		GuestFiles.Guests guests = GuestFiles.load(job, file);
		return new JobPrints(job, guests.prepared(preparer.prepare(job, tolerance, monitor), preparer, tolerance, monitor),
				guests.problems(), tolerance);
	}

	public Job job() {
		return job;
	}

	/** Why guests cannot be had, a sentence each. */
	public List<String> problems() {
		return problems;
	}

	/** Puts a job that has no sheets on one as it lies. @param sheet of no job */
	public void putOn(Sheet sheet) {
		bare = Optional.of(sheet);
		faces.clear();
		sheets.clear();
	}

	/** A sheet. @param number from 1; a job that is put on one sheet as it lies has that */
	public PrintAndCut sheet(int number, PrintOptions wanted, Monitor monitor) {
		if (!wanted.equals(options)) {
			sheets.clear();
			options = wanted;
		}
		PrintAndCut known = sheets.get(number);
		if (known == null) {
			List<SheetFaces> all = faces.computeIfAbsent(wanted.knockOut(),
					knockOut -> bare.isPresent() && job.getSheets().isEmpty()
							? List.of(SheetFaces.bare(jobs.get(job.getId()), bare.get(), knockOut, tolerance, monitor))
							: SheetFaces.of(job, jobs, knockOut, tolerance, monitor));
			known = of(PrintSheet.of(all.get(number - 1), wanted, tolerance, monitor));
			sheets.put(number, known);
		}
		return known;
	}

	/** With cuts that follow the marks, if the sheet keeps where they were measured. */
	static PrintAndCut of(PrintSheet print) {
		if (print.proposed() || print.plan().isEmpty()) {
			return PrintAndCut.of(print, Optional.empty(), Optional.empty());
		}
		try {
			Sheet sheet = print.faces().sheet();
			return PrintAndCut.of(print, SheetMarks.kept(sheet, print.plan().get()),
					SheetMarks.keptBack(sheet, print.plan().get(), print.options().turn()));
		} catch (RegisterException e) {
			PrintAndCut unfit = PrintAndCut.of(print, Optional.empty(), Optional.empty());
			List<Finding> findings = new ArrayList<>(unfit.findings());
			findings.add(Finding.plain("measure-unfit", Severity.BLOCKING, "", print.faces().page().centre(), e.getMessage(),
					Messages.JobPrints_measureAgain));
			return new PrintAndCut(print, Optional.empty(), Optional.empty(), findings);
		}
	}
}
