package org.frisket.toolpath;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.toolpath.track.Track;
import org.frisket.toolpath.track.Tracks;

/** Makes of the lines of a sheet the run that works them. */
public final class RunPlanner {

	private RunPlanner() {
	}

	/**
	 * @param tools   by id; all that the lines name
	 * @param monitor when cancelled a {@link java.util.concurrent.CancellationException} is thrown
	 * @throws IllegalArgumentException if a line names a tool that is not there
	 */
	public static Run plan(List<Line> lines, Map<String, ToolMotion> tools, Carriage carriage, RunChoices choices,
			Monitor monitor) {
		List<Leg> legs = new ArrayList<>();
		for (Stage stage : Stage.values()) {
			for (String tool : lines.stream().filter(line -> line.stage() == stage).map(Line::tool).distinct().sorted().toList()) {
				ToolMotion motion = tools.get(tool);
				List<Stroke> strokes = new ArrayList<>();
				for (Line line : lines) {
					if (line.stage() == stage && line.tool().equals(tool)) {
						Track track = carriage.arcs() ? Tracks.arcs(line.contour(), carriage.tolerance())
								: Tracks.chords(line.contour(), carriage.tolerance());
						var axis = motion.blade().lead(track);
						for (int pass = 1; pass <= line.passes(); pass++) {
							strokes.add(new Stroke(line, pass, track.moves(), axis,
									Collections.nCopies(axis.size(), motion.drive().speed())));
						}
					}
				}
				legs.add(new Leg(stage, tool, strokes));
			}
		}
		return new Run(legs);
	}
}
