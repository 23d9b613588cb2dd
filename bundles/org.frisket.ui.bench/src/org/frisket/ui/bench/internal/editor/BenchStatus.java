package org.frisket.ui.bench.internal.editor;

import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.picture.JobPicture;

/** What the status line says, in words; an empty text where there is nothing to say. */
record BenchStatus(String place, String selection, String pieces, String findings, String zoom) {

	private static final String NONE = ""; //$NON-NLS-1$

	static final BenchStatus NOTHING = new BenchStatus(NONE, NONE, NONE, NONE, NONE);

	private static final double PERCENT = 100;

	/**
	 * @param pointer  in mm; null if it is elsewhere
	 * @param complete whether all findings are there
	 * @param scale    1 at true size
	 */
	static BenchStatus of(Point pointer, List<ElementPart> selected, JobPicture picture, boolean complete,
			double scale) {
		return new BenchStatus(pointer == null ? NONE : LengthText.place(pointer.x(), pointer.y()), selection(selected),
				counted(picture.pieces(), Messages.BenchStatus_onePiece, Messages.BenchStatus_pieces),
				complete ? findings(picture.findings()) : Messages.BenchStatus_checking,
				NLS.bind(Messages.BenchStatus_zoom, Math.round(scale * PERCENT)));
	}

	private static String selection(List<ElementPart> selected) {
		if (selected.isEmpty()) {
			return NONE;
		}
		Bounds bounds = selected.stream().map(ElementPart::boundsInMm).reduce(Bounds.EMPTY, Bounds::with);
		String size = LengthText.size(bounds.width(), bounds.height());
		return selected.size() == 1 ? size : NLS.bind(Messages.BenchStatus_selection, selected.size(), size);
	}

	private static String findings(List<Finding> findings) {
		if (findings.isEmpty()) {
			return Messages.BenchStatus_noFindings;
		}
		long blocking = findings.stream().filter(Finding::isBlocking).count();
		long cautions = findings.stream().filter(finding -> finding.severity() == Severity.CAUTION).count();
		if (blocking > 0) {
			return NLS.bind(Messages.BenchStatus_findingsBlocking, findings.size(), blocking);
		}
		return cautions > 0 ? counted(cautions, Messages.BenchStatus_oneCaution, Messages.BenchStatus_cautions)
				: counted(findings.size(), Messages.BenchStatus_oneNote, Messages.BenchStatus_notes);
	}

	private static String counted(long count, String one, String many) {
		return count == 1 ? one : NLS.bind(many, count);
	}
}
