package org.frisket.cli.print;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.export.plan.SheetChoice;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.print.output.BareSheet;
import org.frisket.print.output.SheetFaces;
import org.frisket.sheets.GuestFiles;
import org.frisket.sheets.imposing.Supply;
import org.frisket.studio.Studio;

/**
 * Which sheets are printed.
 *
 * @param file of the job @param size of the sheet of a job that has none, null for that of its stock
 * @param only numbers of sheets, null for all
 */
record PrintedSheets(Path file, Job job, Conversions.Box size, String only) {

	/** @param notes told which guests cannot be had */
	List<SheetFaces> faces(PreparedJob prepared, boolean knockOut, Tolerance tolerance, PrintWriter notes) throws Refusal {
		if (job.getSheets().isEmpty()) {
			if (only != null) {
				throw new Refusal("--only: the job has no sheets; it is put on one as it lies");
			}
			return List.of(SheetFaces.bare(prepared, bareSheet(), knockOut, tolerance, Monitor.NONE));
		}
		if (size != null) {
			throw new Refusal("--sheet: the job has sheets of its own; choose some of them with --only");
		}
		List<Sheet> chosen = chosen();
		GuestFiles.Guests guests = GuestFiles.load(job, file.toAbsolutePath());
		guests.problems().forEach(notes::println);
		Map<String, PreparedJob> jobs = guests.prepared(prepared, new JobPreparer(FontLibraries.installed()), tolerance,
				Monitor.NONE);
		return SheetFaces.of(job, jobs, knockOut, tolerance, Monitor.NONE).stream()
				.filter(each -> chosen.contains(each.sheet())).toList();
	}

	private List<Sheet> chosen() throws Refusal {
		try {
			return (only == null ? SheetChoice.ALL : SheetChoice.of(only)).of(job);
		} catch (IllegalArgumentException e) {
			throw new Refusal("--only: " + e.getMessage());
		}
	}

	/** Of the size that was asked for, or that its stock comes in. */
	private Sheet bareSheet() throws Refusal {
		if (size != null) {
			return BareSheet.of(job, size.width(), size.height());
		}
		try {
			return BareSheet.of(job, Supply.ofStudio(Studio.folder())).orElseThrow(() -> new Refusal(
					"the job has no sheets, and its stock comes in none: say a size with --sheet, such as --sheet A4"));
		} catch (IOException e) {
			throw new Refusal(e);
		}
	}
}
