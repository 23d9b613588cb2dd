package org.frisket.toolpath.motion;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Track;

/**
 * The speeds at which moves one after the other are passed, and the time they take: corners and curves limit them, and
 * none is faster than what speeds up from the one before or slows down to the next. Rest at both ends.
 */
public final class MotionTime {

	private final double[] time;

	private MotionTime(double[] time) {
		this.time = time;
	}

	/** @param moves each begins where the one before ends */
	public static MotionTime of(List<? extends Move> moves, Drive drive) {
		return of(moves, drive, Collections.nCopies(moves.size(), drive.speed()));
	}

	/** The same with a limit of its own for each move. @param speeds in mm/s, positive, beside the drive's own */
	public static MotionTime of(List<? extends Move> moves, Drive drive, List<Double> speeds) {
		int n = moves.size();
		double[] cruise = new double[n];
		double[] joint = new double[n + 1];
		double[] length = new double[n];
		for (int i = 0; i < n; i++) {
			length[i] = moves.get(i).length();
			cruise[i] = Math.min(Math.min(speeds.get(i), drive.speed()), drive.curveSpeed(moves.get(i).curvature()));
			if (i > 0) {
				joint[i] = Math.min(drive.cornerSpeed(Track.turn(moves.get(i - 1), moves.get(i))),
						Math.min(cruise[i - 1], cruise[i]));
			}
		}
		for (int i = n - 1; i > 0; i--) {
			joint[i] = Math.min(joint[i], reach(joint[i + 1], length[i], drive));
		}
		for (int i = 1; i < n; i++) {
			joint[i] = Math.min(joint[i], reach(joint[i - 1], length[i - 1], drive));
		}
		double[] time = new double[n];
		for (int i = 0; i < n; i++) {
			time[i] = Trapezoid.seconds(length[i], joint[i], joint[i + 1], cruise[i], drive.acceleration());
		}
		return new MotionTime(time);
	}

	/** The speed after a distance at full acceleration. */
	private static double reach(double speed, double distance, Drive drive) {
		return Math.sqrt(speed * speed + 2 * drive.acceleration() * distance);
	}

	/** Of a straight way from rest to rest, in seconds. */
	public static double travel(double distance, Drive drive) {
		return distance == 0 ? 0 : Trapezoid.seconds(distance, 0, 0, drive.speed(), drive.acceleration());
	}

	/** Of all moves, in seconds. */
	public double seconds() {
		return Arrays.stream(time).sum();
	}

	/** Of one move, in seconds. */
	public double seconds(int move) {
		return time[move];
	}
}
