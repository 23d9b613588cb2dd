package org.frisket.export.hpgl;

import org.frisket.export.machine.Digits;

/** Arcs round a centre in whole plotter units; angles in degrees, counter-clockwise where y grows upwards. */
final class ArcWriter {

	/** What HP-GL/2 takes for the angle of a chord, in degrees (from memory). */
	private static final double LEAST_CHORD = 0.5;
	private static final double MOST_CHORD = 120;

	private final double tolerance;

	/** @param tolerance in plotter units: how far chords may be from the arc */
	ArcWriter(double tolerance) {
		this.tolerance = tolerance;
	}

	/** Whether the rounded ends are so near to each other that an arc between them may go the wrong way round. */
	boolean isFlat(long startX, long startY, long endX, long endY, double sweep) {
		return Math.abs(sweep) < Math.PI && Math.hypot(endX - startX, endY - startY) < 2;
	}

	/** From where the pen stands; the angle is the one between the rounded ends, so that rounding does not add up. */
	String instruction(long centreX, long centreY, long startX, long startY, long endX, long endY, double sweep) {
		double from = Math.atan2(startY - centreY, startX - centreX);
		double to = Math.atan2(endY - centreY, endX - centreX);
		double turn = sweep + Math.IEEEremainder(to - from - sweep, 2 * Math.PI);
		double radius = Math.max(1, Math.hypot(startX - centreX, startY - centreY));
		double chord = Math.toDegrees(2 * Math.acos(Math.max(-1, 1 - tolerance / radius)));
		return "AA" + centreX + "," + centreY + "," + Digits.shortest(Math.toDegrees(turn), 3) + ","
				+ Digits.shortest(Math.max(LEAST_CHORD, Math.min(MOST_CHORD, chord)), 1);
	}
}
