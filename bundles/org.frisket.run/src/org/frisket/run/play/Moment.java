package org.frisket.run.play;

import org.frisket.geometry.Point;
import org.frisket.toolpath.Timeline;

/**
 * What a run has come to at a time.
 *
 * @param seconds from the start
 * @param kind    what the machine is at; null when the run is over
 * @param leg     of the run, from 0; the last one when it is over
 * @param stroke  under way or next, counted over all legs from 0; their number when there is none any more
 * @param done    how many strokes are done
 * @param share   of the stroke under way, from 0 to 1; 0 if there is none
 * @param place   of the tool in mm on the sheet
 */
public record Moment(double seconds, Timeline.Kind kind, int leg, int stroke, int done, double share, Point place) {

	public boolean isOver() {
		return kind == null;
	}

	/** Whether the tool is on the sheet. */
	public boolean isDown() {
		return kind == Timeline.Kind.STROKE;
	}
}
