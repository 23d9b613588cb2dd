package org.frisket.toolpath.internal.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.toolpath.Carriage;
import org.frisket.toolpath.Line;
import org.frisket.toolpath.RunChoices;
import org.frisket.toolpath.RunChoices.Direction;
import org.frisket.toolpath.RunChoices.PassOrder;
import org.frisket.toolpath.RunChoices.Tabs;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.ToolMotion;
import org.frisket.toolpath.internal.start.TabPlaces;
import org.frisket.toolpath.track.MeasuredTrack;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Track;

/** Makes an errand of a line: all round, in pieces between tabs, or from end to end. */
final class LineErrands {

	private final Map<String, StrokeMaker> makers = new HashMap<>();
	private final RunChoices choices;

	LineErrands(Map<String, ToolMotion> tools, Carriage carriage, RunChoices choices) {
		this.choices = choices;
		tools.forEach((id, motion) -> makers.put(id, new StrokeMaker(motion, carriage, choices)));
	}

	/** @param whole what the line was before edges that it shares were left to others */
	Errand of(Line line, Contour whole) {
		StrokeMaker maker = makers.get(line.tool());
		Track track = maker.track(directed(line.contour()));
		Bounds box = line.contour().bounds();
		double size = box.width() * box.height();
		int atOnce = choices.passOrder() == PassOrder.PART ? line.passes() : 1;
		List<List<Move>> pieces = whole.isClosed() ? tabbed(line, track, whole) : List.of();
		if (!pieces.isEmpty()) {
			return new PiecedErrand(line, pieces, track.closed(), atOnce, maker, size);
		}
		return track.closed() ? new RoundErrand(line, track, maker, size)
				: new PiecedErrand(line, List.of(track.moves()), false, atOnce, maker, size);
	}

	private Contour directed(Contour contour) {
		Direction direction = choices.direction();
		if (!contour.isClosed() || direction == Direction.EITHER) {
			return contour;
		}
		// y points down: what runs clockwise as seen has a positive area
		boolean clockwise = contour.signedArea() >= 0;
		return clockwise == (direction == Direction.CLOCKWISE) ? contour : contour.reversed();
	}

	/** What is left of a shared line gets its share of the tabs. */
	private List<List<Move>> tabbed(Line line, Track track, Contour whole) {
		Tabs tabs = choices.tabs();
		if (line.stage() != Stage.CUT || tabs.count() == 0 || !(tabs.width() > 0)) {
			return List.of();
		}
		MeasuredTrack measured = new MeasuredTrack(track);
		double length = track.closed() ? measured.length() : whole.length();
		if (length < tabs.least()) {
			return List.of();
		}
		int count = (int) Math.round(tabs.count() * measured.length() / length);
		return TabPlaces.pieces(measured, count, tabs.width());
	}
}
