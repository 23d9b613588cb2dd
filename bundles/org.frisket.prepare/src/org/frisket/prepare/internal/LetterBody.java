package org.frisket.prepare.internal;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.Bar;
import org.frisket.model.BarKind;
import org.frisket.model.Flow;
import org.frisket.model.Wording;
import org.frisket.prepare.Severity;
import org.frisket.typography.join.Bars;
import org.frisket.typography.join.Ties;

/** What becomes of clean letters: made heavier, held together by bars and ties. */
final class LetterBody {

	private LetterBody() {
	}

	static Region of(Region letters, Wording wording, WordingText text, List<Shape.Remark> remarks, Tolerance tolerance,
			Monitor monitor) {
		Region body = letters;
		if (wording.getEmbolden() != 0) {
			body = Offset.of(body, wording.getEmbolden(), Corners.MITRE, Holes.KEEP, tolerance, monitor);
			if (body.isEmpty() && !letters.isEmpty()) {
				remarks.add(new Shape.Remark("letters-vanished", Severity.CAUTION, letters.bounds().centre(),
						"Nothing is left of the letters when their edges are moved in so far.",
						"Take less away from them."));
			}
		}
		for (Bar bar : wording.getBars()) {
			body = withBar(body, bar, wording, text, remarks, tolerance, monitor);
		}
		if (wording.isTieMarks() && wording.getTieWidth() > 0) {
			body = Ties.marks(text.placed(), body, wording.getTieWidth(), tolerance, monitor).region();
		}
		return body;
	}

	private static Region withBar(Region body, Bar bar, Wording wording, WordingText text, List<Shape.Remark> remarks,
			Tolerance tolerance, Monitor monitor) {
		if (body.isEmpty()) {
			return body;
		}
		boolean alongLines = bar.getKind() != BarKind.FRAME;
		boolean straight = text.curve().isEmpty() && wording.getFlow() != Flow.STACKED;
		if (alongLines && !straight) {
			remarks.add(leftOut(body.bounds().centre(), "A bar can only be set along straight lines.",
					"Set the wording straight, or give it a frame."));
			return body;
		}
		double margin = bar.getOffset();
		Bounds inner = body.bounds().grown(margin);
		boolean noRoom = !alongLines && !(inner.width() > 0 && inner.height() > 0);
		if (!(bar.getThickness() > 0) || noRoom) {
			remarks.add(leftOut(body.bounds().centre(), "A bar or frame has no thickness or no room.",
					"Give it a thickness above 0."));
			return body;
		}
		Outline outline = switch (bar.getKind()) {
		case UNDERLINE -> Bars.along(text.straight(), bar.getOffset(), bar.getThickness(), bar.getOverhang());
		case BASELINE -> Bars.along(text.straight(), bar.getOffset() - bar.getThickness(), bar.getThickness(),
				bar.getOverhang());
		case FRAME -> Bars.frame(body.bounds(), margin, bar.getThickness(), 0);
		};
		return Bars.united(body, outline, tolerance, monitor);
	}

	private static Shape.Remark leftOut(Point place, String message, String cure) {
		return new Shape.Remark("bar-left-out", Severity.CAUTION, place, message, cure);
	}
}
