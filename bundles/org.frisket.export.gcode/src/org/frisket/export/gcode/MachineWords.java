package org.frisket.export.gcode;

/**
 * Words for a machine whose profile has none: in RS274/NGC M3 starts and M5 stops what works, and M0 waits for whoever
 * stands there (NISTIR 6556, from memory). They are the nearest that the standard has to a tool that goes down and up.
 */
final class MachineWords {

	static final String DOWN = "M3";
	static final String UP = "M5";
	static final String STOP = "M0";

	private MachineWords() {
	}
}
