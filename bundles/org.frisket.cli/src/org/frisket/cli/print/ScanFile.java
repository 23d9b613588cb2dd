package org.frisket.cli.print;

import java.nio.file.Path;

import org.frisket.cli.line.Refusal;
import org.frisket.geometry.Monitor;
import org.frisket.print.marks.FoundMarks;
import org.frisket.print.marks.MarkFinder;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.picture.PictureFile;
import org.frisket.print.picture.Resolution;
import org.frisket.print.picture.UnreadablePictureException;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;
import org.frisket.print.register.Registration;

/**
 * A scan of a printed sheet.
 *
 * @param option     that names it, as the beginning of a refusal
 * @param found      the marks in it
 * @param resolution of the scan
 */
record ScanFile(String option, FoundMarks found, Resolution resolution) {

	/** @param dpi null to take what the file says */
	static ScanFile of(String option, Path file, Double dpi, MarkPlan plan) throws Refusal {
		try {
			PictureFile picture = PictureFile.of(file);
			Resolution resolution = dpi == null ? picture.resolution() : Resolution.given(dpi);
			if (resolution.source() == Resolution.Source.ASSUMED) {
				throw new Refusal(option + ": “" + file + "” does not say how many dots to the inch it has; say so with --dpi");
			}
			return new ScanFile(option, MarkFinder.find(plan, picture.pixels(Monitor.NONE).grey(), resolution.x(), Monitor.NONE),
					resolution);
		} catch (UnreadablePictureException e) {
			throw new Refusal(option + ": " + e.getMessage());
		}
	}

	/** Places in mm from the top left of the scan. @throws Refusal if nothing may be cut by it */
	Registration registration(FitKind kind) throws Refusal {
		for (RegisterFinding finding : found.findings()) {
			if (finding.isBlocking()) {
				throw new Refusal(option + ": " + finding.message() + " " + finding.cure());
			}
		}
		try {
			return found.registration(kind, resolution);
		} catch (RegisterException e) {
			throw new Refusal(option + ": " + e.getMessage());
		}
	}
}
