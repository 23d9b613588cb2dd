package org.frisket.run.play;

import org.frisket.run.LegWork;
import org.frisket.toolpath.Stage;

/**
 * A leg of a run in numbers.
 *
 * @param from    in seconds from the start of the run, the stop before it included
 * @param seconds that it takes, the stop before it included
 * @param strokes how many
 * @param first   of its strokes, counted over all legs from 0
 * @param mm      of line worked, all passes counted
 * @param stop    whether somebody changes the tool before it
 */
public record LegLine(Stage stage, LegWork work, double from, double seconds, int strokes, int first, double mm,
		boolean stop) {
}
