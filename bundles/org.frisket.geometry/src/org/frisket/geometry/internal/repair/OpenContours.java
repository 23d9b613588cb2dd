package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairStep;

/**
 * Closes lines whose ends lie close together. Within the tolerance both ends come to the middle; a wider gap, which the
 * option allows, is bridged by a straight line and nothing moves.
 */
public final class OpenContours implements RepairStep {

	private static final double WIDEST = 100;

	private static final Option REACH = Option.length("reach", Words.of("OpenContours_reach"), "0mm", 0, WIDEST);

	@Override
	public List<Option> options() {
		return List.of(REACH);
	}

	@Override
	public Moves moves(OptionValues options) {
		return Moves.ENDS;
	}

	@Override
	public Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor) {
		double meeting = 2 * tolerance.mm();
		double reach = options.length(REACH) == 0 ? meeting : options.length(REACH);
		List<Contour> lines = new ArrayList<>();
		List<Mend> mends = new ArrayList<>();
		List<Contour> brought = new ArrayList<>();
		for (Contour line : artwork.lines()) {
			monitor.check();
			Contour closed = line.isClosed() || line.isEmpty() ? line : closed(line, reach, meeting);
			lines.add(closed);
			if (closed != line) {
				if (line.start().distance(line.end()) > meeting) {
					brought.add(Contour.open(List.of(new Line(line.end(), line.start()))));
				}
				mends.add(new Mend("contour-closed", line.start().towards(line.end(), 0.5),
						line.start().distance(line.end()), "mm"));
			}
		}
		return new Mended(artwork.withLines(lines), mends, List.of(), brought);
	}

	/** The line itself if it is to stay open: its ends lie apart, or it is hardly longer than the gap. */
	private static Contour closed(Contour line, double reach, double meeting) {
		double gap = line.start().distance(line.end());
		if (gap > reach || line.length() <= 2 * gap) {
			return line;
		}
		if (gap > meeting) {
			List<Segment> segments = new ArrayList<>(line.segments());
			segments.add(new Line(line.end(), line.start()));
			return Contour.closed(segments);
		}
		Point middle = line.start().towards(line.end(), 0.5);
		List<Segment> segments = Ends.moved(line, middle, middle);
		return segments.isEmpty() ? line : Contour.closed(segments);
	}
}
