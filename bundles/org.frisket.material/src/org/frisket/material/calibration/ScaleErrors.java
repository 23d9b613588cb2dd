package org.frisket.material.calibration;

import org.frisket.material.tools.Machine;

/**
 * How a machine's axes differ from what they are told. Errors are carried on to first order, as the guide to the expression
 * of uncertainty in measurement has it (JCGM 100, 5.1.2; from memory), from the error of one measurement.
 *
 * @param x    drawn length over the one that was asked for, along x
 * @param y    the same along y
 * @param skew how much less than 90° the angle is between the right and the upper arm, in degrees; null if it was not
 *             measured
 */
public record ScaleErrors(Estimate x, Estimate y, Estimate skew) {

	/** What lengths along x have to be multiplied with. */
	public double correctX() {
		return 1 / x.value();
	}

	/** What lengths along y have to be multiplied with. */
	public double correctY() {
		return 1 / y.value();
	}

	/** The machine with these factors, to the fifth decimal; the cross has to be drawn without any. */
	public Machine correct(Machine machine) {
		return machine.withScale(Math.rint(correctX() * 1e5) / 1e5, Math.rint(correctY() * 1e5) / 1e5);
	}
}
