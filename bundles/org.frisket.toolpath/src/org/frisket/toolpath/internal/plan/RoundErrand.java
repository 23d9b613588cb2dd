package org.frisket.toolpath.internal.plan;

import java.util.ArrayList;
import java.util.List;

import org.frisket.toolpath.Line;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.internal.start.StartPlaces;
import org.frisket.toolpath.track.MeasuredTrack;
import org.frisket.toolpath.track.Track;

/**
 * A closed line, begun at a smooth place. The tool comes down before it and goes on beyond it, each by one more time
 * round at most. Between passes it goes round again without being lifted: the lead-in is for the first of them, the
 * overcut for the last.
 */
final class RoundErrand extends Errand {

	private final Line line;
	private final StrokeMaker maker;
	private final MeasuredTrack track;
	private final double leadIn;
	private final double overcut;
	private final double[] starts;

	RoundErrand(Line line, Track track, StrokeMaker maker, double size) {
		super(line.tool(), line.passes(), size);
		this.line = line;
		this.maker = maker;
		this.track = new MeasuredTrack(track);
		leadIn = Math.min(maker.leadIn(line), this.track.length());
		overcut = Math.min(maker.overcut(line), this.track.length());
		// a swing of the axis next to the start should not come on it
		starts = StartPlaces.of(this.track, Math.max(2 * maker.offset(), Math.max(leadIn, overcut)));
	}

	@Override
	List<Gate> gates() {
		List<Gate> gates = new ArrayList<>();
		for (double start : starts) {
			MeasuredTrack.Place in = track.at(start - leadIn);
			MeasuredTrack.Place out = track.at(start + overcut);
			gates.add(new Gate(maker.ahead(in.point(), in.heading()), maker.ahead(out.point(), out.heading())));
		}
		return gates;
	}

	@Override
	void work(int gate, int first, int last, List<Stroke> strokes) {
		for (int pass = first; pass <= last; pass++) {
			double from = starts[gate] - (pass == first ? leadIn : 0);
			double to = starts[gate] + track.length() + (pass == last ? overcut : 0);
			strokes.add(maker.stroke(line, pass, track.stretch(from, to)));
		}
	}
}
