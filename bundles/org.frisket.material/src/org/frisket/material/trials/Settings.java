package org.frisket.material.trials;

/**
 * How a line is worked.
 *
 * @param exposure how far the blade stands out of its holder, in mm; 0 for what is not a blade
 * @param pressure in the machine's steps
 * @param speed    in the machine's steps
 * @param passes   how often the line is gone over; at least 1
 */
public record Settings(double exposure, double pressure, double speed, int passes) {

	public Settings {
		if (!(exposure >= 0) || !Double.isFinite(exposure + pressure + speed) || passes < 1) {
			throw new IllegalArgumentException("settings of exposure " + exposure + " mm, pressure " + pressure
					+ ", speed " + speed + ", passes " + passes);
		}
	}

	public double get(Parameter parameter) {
		return switch (parameter) {
		case EXPOSURE -> exposure;
		case PRESSURE -> pressure;
		case SPEED -> speed;
		case PASSES -> passes;
		};
	}

	/** @throws IllegalArgumentException if the value cannot be that of the parameter */
	public Settings with(Parameter parameter, double value) {
		if (parameter == Parameter.PASSES && value != Math.rint(value)) {
			throw new IllegalArgumentException(value + " passes");
		}
		return switch (parameter) {
		case EXPOSURE -> new Settings(value, pressure, speed, passes);
		case PRESSURE -> new Settings(exposure, value, speed, passes);
		case SPEED -> new Settings(exposure, pressure, value, passes);
		case PASSES -> new Settings(exposure, pressure, speed, (int) value);
		};
	}
}
