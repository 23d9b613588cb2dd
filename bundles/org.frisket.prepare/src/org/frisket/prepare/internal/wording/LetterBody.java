package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.CleanResult;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.Bar;
import org.frisket.model.BarKind;
import org.frisket.model.Flow;
import org.frisket.model.Wording;
import org.frisket.prepare.Severity;
import org.frisket.prepare.internal.Shape;
import org.frisket.typography.join.Bars;
import org.frisket.typography.join.Bridges;
import org.frisket.typography.join.Ties;

/** What becomes of clean letters: made heavier, held together by bars, ties and bridges. */
final class LetterBody {

	private LetterBody() {
	}

	static HeldLetters of(CleanResult clean, Wording wording, WordingText text, Tolerance tolerance, Monitor monitor) {
		List<Shape.Remark> remarks = new ArrayList<>();
		Region body = emboldened(clean.region(), wording, tolerance, monitor);
		if (body.isEmpty() && !clean.region().isEmpty()) {
			remarks.add(new Shape.Remark("letters-vanished", Severity.BLOCKING, clean.region().bounds().centre(),
					Messages.LetterBody_vanished,
					Messages.LetterBody_vanishedCure));
		}
		for (Bar bar : wording.getBars()) {
			body = withBar(body, bar, wording, text, remarks, tolerance, monitor);
		}
		if (wording.isTieMarks() && wording.getTieWidth() > 0) {
			body = Ties.marks(text.outlined(), body, wording.getTieWidth(), tolerance, monitor).region();
		}
		Bridges.Bridged bridged = HandBridges.set(body, wording, text,
				letter -> emboldened(letter, wording, tolerance, monitor), remarks, tolerance, monitor);
		return HandBridges.stencilled(new HeldLetters(clean, bridged.region(), bridged.outcomes(), List.of(), List.of(),
				remarks), wording, text, tolerance, monitor);
	}

	private static Region emboldened(Region letters, Wording wording, Tolerance tolerance, Monitor monitor) {
		return wording.getEmbolden() == 0 ? letters
				: Offset.of(letters, wording.getEmbolden(), Corners.MITRE, Holes.KEEP, tolerance, monitor);
	}

	private static Region withBar(Region body, Bar bar, Wording wording, WordingText text, List<Shape.Remark> remarks,
			Tolerance tolerance, Monitor monitor) {
		if (body.isEmpty()) {
			return body;
		}
		boolean alongLines = bar.getKind() != BarKind.FRAME;
		if (alongLines && wording.getFlow() == Flow.STACKED) {
			remarks.add(leftOut(body.bounds().centre(), Messages.LetterBody_stacked,
					Messages.LetterBody_stackedCure));
			return body;
		}
		double margin = bar.getOffset();
		Bounds inner = body.bounds().grown(margin);
		boolean noRoom = !alongLines && !(inner.width() > 0 && inner.height() > 0);
		if (!(bar.getThickness() > 0) || noRoom) {
			remarks.add(leftOut(body.bounds().centre(), Messages.LetterBody_noRoom,
					Messages.LetterBody_noRoomCure));
			return body;
		}
		Outline outline = switch (bar.getKind()) {
		case UNDERLINE -> along(text, bar.getOffset(), bar);
		case BASELINE -> along(text, bar.getOffset() - bar.getThickness(), bar);
		case FRAME -> Bars.frame(body.bounds(), margin, bar.getThickness(), 0);
		};
		return Bars.united(body, outline, tolerance, monitor);
	}

	/** On an arc or a path the bar follows it. */
	private static Outline along(WordingText text, double top, Bar bar) {
		Outline straight = Bars.along(text.straight(), top, bar.getThickness(), bar.getOverhang());
		return text.curve().map(curve -> CurvedBars.of(straight, text.straight(), curve)).orElse(straight);
	}

	private static Shape.Remark leftOut(Point place, String message, String cure) {
		return new Shape.Remark("bar-left-out", Severity.CAUTION, place, message, cure);
	}
}
