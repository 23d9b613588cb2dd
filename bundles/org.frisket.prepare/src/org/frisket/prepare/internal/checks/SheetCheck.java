package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.Measures;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limit;
import org.frisket.prepare.checks.SheetSize;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.cures.SizeCures;

/**
 * A piece that goes on no sheet of its stock, less the margins, however it is turned. A job does not say yet where its
 * parts lie on a sheet, so that only their size can be checked; and only where the stock on the studio's shelf, or its
 * limits, say how large the sheets are.
 */
public final class SheetCheck implements Check {

	private static final String ID = "piece-too-large";

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		Worked.cut(job).forEach(element -> {
			monitor.check();
			Layer layer = Jobs.layerOf(element.element());
			List<SheetSize> sheets = limits.sheets(layer);
			if (!sheets.isEmpty()) {
				check(element, sheets, limits.of(layer).get(Limit.SHEET_MARGIN), tolerance, findings);
			}
		});
	}

	private static void check(PreparedElement element, List<SheetSize> sheets, double margin, Tolerance tolerance,
			Consumer<Finding> findings) {
		for (Piece piece : element.region().pieces()) {
			double width = piece.bounds().width();
			double height = piece.bounds().height();
			Measures.Box upright = new Measures.Box(Math.min(width, height), Math.max(width, height));
			if (sheets.stream().anyMatch(sheet -> room(upright, sheet, margin) >= 1)) {
				continue;
			}
			Measures.Box box = Measures.smallestBox(piece, tolerance);
			SheetSize best = sheets.get(0);
			for (SheetSize sheet : sheets) {
				if (room(box, sheet, margin) > room(box, best, margin)) {
					best = sheet;
				}
			}
			if (room(box, best, margin) < 1) {
				findings.accept(finding(element, piece, box, best, margin));
			}
		}
	}

	/** How many times as large a piece could be on a sheet; less than one if it does not go on it. */
	private static double room(Measures.Box box, SheetSize sheet, double margin) {
		return Math.min(allowed(sheet.narrow(), margin) / box.narrow(), allowed(sheet.wide(), margin) / box.wide());
	}

	private static double allowed(double side, double margin) {
		return Math.max(0, side - 2 * margin);
	}

	/** With the side of the piece that is too long by the most, on the sheet that would hold most of it. */
	private static Finding finding(PreparedElement element, Piece piece, Measures.Box box, SheetSize sheet,
			double margin) {
		double narrow = allowed(sheet.narrow(), margin);
		double wide = allowed(sheet.wide(), margin);
		boolean isLong = wide / box.wide() <= narrow / box.narrow();
		boolean inMargin = room(box, sheet, 0) >= 1;
		String message = NLS.bind(inMargin ? Messages.SheetCheck_margin : Messages.SheetCheck_large,
				new Object[] { Figures.length(isLong ? box.wide() : box.narrow(), 1), Figures.length(isLong ? wide : narrow, 1),
						Figures.length(margin, 1) });
		return Finding.measured(ID, Severity.CAUTION, element.element().getId(), piece.bounds().centre(),
				isLong ? box.wide() : box.narrow(), isLong ? wide : narrow, message, Messages.SheetCheck_largeCure);
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? SizeCures.ofLargePiece(finding, trial) : List.of();
	}
}
