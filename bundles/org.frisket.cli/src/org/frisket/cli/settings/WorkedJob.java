package org.frisket.cli.settings;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.work.Preparation;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.OperationKind;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.LineWork;
import org.frisket.prepare.fonts.FontLibraries;

/**
 * A job that was run, and how much line of it was worked.
 *
 * @param id of the job
 * @param mm of line, all passes counted
 */
record WorkedJob(String id, double mm) {

	/**
	 * @param named  the id of the job, or its file
	 * @param length in mm, as it was said; null to have it measured in the file
	 */
	static WorkedJob of(String named, WorkOptions work, int passes, Double length) throws Refusal {
		if (!named.endsWith(JobFile.ENDING) || !Files.exists(Path.of(named))) {
			if (length == null) {
				throw new Refusal("--length: say how much line was worked, or name the file of the job in place of “" + named
						+ "”, so that it can be measured");
			}
			return new WorkedJob(named, length);
		}
		Job job = Preparation.load(Path.of(named));
		return new WorkedJob(job.getId(), length != null ? length : measured(job, named, work, passes));
	}

	/** Of the layers in the stock; of all of them where none is said, or none is of it. */
	private static double measured(Job job, String file, WorkOptions work, int passes) throws Refusal {
		OperationKind kind = work.operation();
		List<LineWork> all;
		try {
			all = LineWork.of(new JobPreparer(FontLibraries.installed()).prepare(job, Tolerance.DEFAULT, Monitor.NONE));
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
		List<LineWork> fitting = all.stream().filter(each -> each.kind() == kind).toList();
		String stock = work.stock().stock();
		List<LineWork> ofStock = fitting.stream().filter(each -> each.stock().equals(stock)).toList();
		double mm = (ofStock.isEmpty() ? fitting : ofStock).stream().mapToDouble(each -> each.mm(passes)).sum();
		if (!(mm > 0)) {
			throw new Refusal(file + ": nothing that is shown has the operation " + kind.getLiteral()
					+ "; say how much line was worked with --length");
		}
		return mm;
	}
}
