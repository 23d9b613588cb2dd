package org.frisket.toolpath;

import java.util.Objects;

import org.frisket.geometry.Point;
import org.frisket.toolpath.motion.Drive;

/**
 * What carries the tools.
 *
 * @param travel    how it moves with the tool lifted
 * @param lower     seconds to set the tool down
 * @param lift      seconds to lift it
 * @param change    seconds in which somebody changes the tool
 * @param home      where it stands before and after a run, in mm on the sheet
 * @param arcs      whether it follows arcs; otherwise it is given chords
 * @param tolerance in mm, positive: how far arcs or chords may be from the curve
 */
public record Carriage(Drive travel, double lower, double lift, double change, Point home, boolean arcs,
		double tolerance) {

	/** @throws IllegalArgumentException for times below 0 or a tolerance that is not above */
	public Carriage {
		Objects.requireNonNull(travel);
		Objects.requireNonNull(home);
		if (!(lower >= 0) || !(lift >= 0) || !(change >= 0) || !(tolerance > 0)) {
			throw new IllegalArgumentException("a carriage that lowers in " + lower + " s, lifts in " + lift
					+ " s, changes in " + change + " s, true to " + tolerance + " mm");
		}
	}
}
