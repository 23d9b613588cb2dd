package org.frisket.print.output;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.frisket.export.ExportTask;
import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.export.Handoff;
import org.frisket.export.WorkshopSource;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.WholeFile;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.print.register.Projection;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.Registration;
import org.frisket.sheets.LaidSheet;
import org.frisket.toolpath.RunChoices;

/**
 * The two files of a sheet, in one frame: what it is printed from, and what it is cut by. Where work is done on the back as
 * well there is a third, in the frame of the sheet turned over.
 *
 * @param print    what is printed
 * @param fit      how the printed sheet lies, so that cuts go where the print is; empty to cut as designed
 * @param backFit  the same of the sheet turned over, by marks that were measured on its back
 * @param findings of both
 */
public record PrintAndCut(PrintSheet print, Optional<Registration> fit, Optional<Registration> backFit,
		List<Finding> findings) {

	/** Formats in which marks can be shown without being taken for work: steps are groups apart there. */
	private static final Set<String> WITH_REFERENCE = Set.of("pdf");

	/** What files there are to be. */
	public enum Role {
		PRINT("-print"), CUT("-cut"), CUT_BACK("-cut-back");

		private final String ending;

		Role(String ending) {
			this.ending = ending;
		}
	}

	public PrintAndCut {
		findings = List.copyOf(findings);
	}

	/** @param fit of the marks on the front of this print @param backFit of those on its back */
	public static PrintAndCut of(PrintSheet print, Optional<Registration> fit, Optional<Registration> backFit) {
		SheetFaces faces = print.faces();
		List<Finding> findings = new ArrayList<>(faces.findings());
		findings.addAll(print.findings());
		String id = faces.sheet().getId() == null ? "" : faces.sheet().getId();
		if (!isWorked(faces, false) && !isWorked(faces, true)) {
			findings.add(Finding.plain("nothing-worked", Severity.NOTE, id, faces.page().centre(), Messages.PrintAndCut_nothing,
					Messages.PrintAndCut_nothingCure));
		}
		if (fit.isPresent() && backFit.isEmpty() && isWorked(faces, true)) {
			findings.add(Finding.plain("back-not-measured", Severity.CAUTION, id, faces.page().centre(),
					Messages.PrintAndCut_back, Messages.PrintAndCut_backCure));
		}
		return new PrintAndCut(print, fit, backFit, findings);
	}

	/** Whether anything is on the back of the sheet. */
	public boolean isTwoSided() {
		return !print.back().isEmpty() || isWorked(print.faces(), true);
	}

	private static boolean isWorked(SheetFaces faces, boolean back) {
		return faces.items(back).stream().anyMatch(item -> !item.worked().isEmpty());
	}

	public boolean isBlocked() {
		return findings.stream().anyMatch(Finding::isBlocking);
	}

	/** Whether files of this format show the marks beside the work. */
	public static boolean showsMarks(Contribution<Exporter> format) {
		return WITH_REFERENCE.contains(Exporters.ending(format));
	}

	/** The files that there will be. @param base folder and name without ending */
	public Map<Role, Path> targets(Path base, Contribution<Exporter> format) {
		Map<Role, Path> targets = new LinkedHashMap<>();
		if (print.isPrinted()) {
			targets.put(Role.PRINT, named(base, Role.PRINT, "pdf"));
		}
		if (isWorked(print.faces(), false)) {
			targets.put(Role.CUT, named(base, Role.CUT, Exporters.ending(format)));
		}
		if (isWorked(print.faces(), true) && (fit.isEmpty() || backFit.isPresent())) {
			targets.put(Role.CUT_BACK, named(base, Role.CUT_BACK, Exporters.ending(format)));
		}
		return targets;
	}

	private static Path named(Path base, Role role, String ending) {
		return base.resolveSibling(base.getFileName() + role.ending + "." + ending);
	}

	/**
	 * Writes the files, each whole or not at all.
	 *
	 * @param options of the format, defaults for what is missing
	 * @throws IOException if one cannot be written; the message names it
	 * @throws ContributionException if the exporter fails for a reason of its own
	 * @throws RegisterException if cuts cannot be mapped
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public Map<Role, Path> write(Path base, Contribution<Exporter> format, Map<String, String> options, WorkshopSource workshop,
			RunChoices choices, Tolerance tolerance, Monitor monitor) throws IOException, ContributionException, RegisterException {
		Map<Role, Path> targets = targets(base, format);
		// what cannot be mapped leaves no print behind that nobody can cut
		Map<Role, LaidSheet> cuts = new LinkedHashMap<>();
		for (Role role : targets.keySet()) {
			if (role != Role.PRINT) {
				cut(role == Role.CUT_BACK, showsMarks(format), tolerance, monitor).ifPresent(laid -> cuts.put(role, laid));
			}
		}
		if (targets.containsKey(Role.PRINT)) {
			Path file = targets.get(Role.PRINT);
			try {
				WholeFile.write(out -> PrintFile.write(print, monitor, out), file);
			} catch (IOException e) {
				throw new IOException(file + ": " + WholeFile.reason(e), e);
			}
		}
		for (Map.Entry<Role, LaidSheet> cut : cuts.entrySet()) {
			new ExportTask(format).write(Handoff.of(cut.getValue(), workshop, choices), options, monitor, targets.get(cut.getKey()));
		}
		return targets;
	}

	/** What is worked on a side, for an exporter; empty if nothing is. @param marks whether they are shown */
	public Optional<LaidSheet> cut(boolean back, boolean marks, Tolerance tolerance, Monitor monitor) throws RegisterException {
		SheetFaces faces = print.faces();
		Projection lies = (back ? backFit : fit).map(Registration::map).orElse(Projection.IDENTITY);
		Projection map = back
				? Projection.of(print.options().turn().over(faces.sheet().getWidth(), faces.sheet().getHeight())).then(lies)
				: lies;
		return new CutFace(faces, map, tolerance).of(back, marks ? print.plan() : Optional.empty(), monitor);
	}
}
