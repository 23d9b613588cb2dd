package org.frisket.material.calibration;

import org.eclipse.osgi.util.NLS;

/**
 * What was measured on a drawn cross, in mm.
 *
 * @param across    from the left end to the right one
 * @param down      from the top end to the bottom one
 * @param rightTop  from the right end to the top one; 0 if it was not measured
 * @param rightDown from the right end to the bottom one; 0 if it was not measured
 * @param error     standard error of one measurement, above 0: about 0.1 with a steel rule
 */
public record ScaleReading(double across, double down, double rightTop, double rightDown, double error) {

	/** A machine that is off by more is not calibrated but broken, or the wrong thing was measured. */
	private static final double MOST_OFF = 0.1;

	public ScaleReading {
		if (!(across > 0) || !(down > 0) || !(rightTop >= 0) || !(rightDown >= 0) || !(error > 0)) {
			throw new IllegalArgumentException(Messages.ScaleReading_positive);
		}
	}

	/**
	 * How the machine's axes differ from what they were told.
	 *
	 * @throws IllegalArgumentException if a length is off by more than a tenth
	 */
	public ScaleErrors against(ScaleSheet sheet) {
		double half = Math.hypot(sheet.width(), sheet.height()) / 2;
		near(across, sheet.width());
		near(down, sheet.height());
		Estimate x = new Estimate(across / sheet.width(), error / sheet.width());
		Estimate y = new Estimate(down / sheet.height(), error / sheet.height());
		if (rightTop == 0 || rightDown == 0) {
			return new ScaleErrors(x, y, null);
		}
		near(rightTop, half);
		near(rightDown, half);
		double sine = (rightDown * rightDown - rightTop * rightTop) / (across * down);
		double sineError = 2 * error * Math.hypot(rightDown, rightTop) / (across * down);
		return new ScaleErrors(x, y, new Estimate(Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, sine)))),
				Math.toDegrees(sineError / Math.sqrt(Math.max(1e-9, 1 - sine * sine)))));
	}

	private static void near(double measured, double drawn) {
		if (!(Math.abs(measured / drawn - 1) <= MOST_OFF)) {
			throw new IllegalArgumentException(NLS.bind(Messages.ScaleReading_far, measured, Math.rint(drawn * 100) / 100));
		}
	}
}
