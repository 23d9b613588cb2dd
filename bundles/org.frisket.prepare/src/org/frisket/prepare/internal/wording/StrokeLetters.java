package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.RegionBoolean;
import org.frisket.geometry.fill.PenTrack;
import org.frisket.prepare.Uncleaned;
import org.frisket.prepare.internal.Shape;
import org.frisket.typography.Letter;

/** Letters of single lines: drawn as they are, and never anything that a blade could go round. */
final class StrokeLetters {

	/** What mats follow is drawn by a pen this wide, in mm; common practice, no source. */
	private static final double PEN = 0.5;

	private StrokeLetters() {
	}

	/** @param region of the other letters of the wording, which are drawn with them */
	static Shape shape(WordingText text, Region region, Uncleaned uncleaned, List<Shape.Remark> remarks,
			Tolerance tolerance, Monitor monitor) {
		List<Contour> strokes = new ArrayList<>();
		for (Letter letter : text.strokes()) {
			strokes.addAll(letter.outline().contours());
		}
		List<Contour> lines = new ArrayList<>(region.contours());
		lines.addAll(strokes);
		return Shape.drawn(body(strokes, region, tolerance, monitor), lines, uncleaned, remarks);
	}

	private static Region body(List<Contour> strokes, Region region, Tolerance tolerance, Monitor monitor) {
		Region body = PenTrack.of(strokes, PEN, tolerance, monitor);
		return region.isEmpty() ? body : new RegionBoolean().union(List.of(region, body), tolerance, monitor);
	}
}
