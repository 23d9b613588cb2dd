package org.frisket.toolpath.motion;

/** One stretch with a limit of speed: speeding up, going on, slowing down (equations of uniform acceleration). */
public final class Trapezoid {

	private Trapezoid() {
	}

	/**
	 * The time a stretch takes, in seconds.
	 *
	 * @param distance     in mm, 0 or more
	 * @param entry        speed at its start in mm/s; the exit can be reached from it
	 * @param exit         speed at its end
	 * @param cruise       the limit, no less than both
	 * @param acceleration in mm/s²
	 */
	public static double seconds(double distance, double entry, double exit, double cruise, double acceleration) {
		double up = (cruise * cruise - entry * entry) / (2 * acceleration);
		double down = (cruise * cruise - exit * exit) / (2 * acceleration);
		if (up + down <= distance) {
			return (cruise - entry) / acceleration + (cruise - exit) / acceleration + (distance - up - down) / cruise;
		}
		double peak = peak(distance, entry, exit, acceleration);
		return (peak - entry) / acceleration + (peak - exit) / acceleration;
	}

	/** The speed that is reached where there is no room for the limit, in mm/s. */
	public static double peak(double distance, double entry, double exit, double acceleration) {
		// rounding may put it below the faster end
		return Math.max(Math.max(entry, exit),
				Math.sqrt(acceleration * distance + (entry * entry + exit * exit) / 2));
	}
}
