package org.frisket.run.play;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.desk.RunPlan;
import org.frisket.toolpath.Timeline;

/** Runs in words, with units. */
public final class RunWords {

	private static final int MINUTE = 60;
	private static final int HOUR = 60 * MINUTE;

	private RunWords() {
	}

	/** Such as {@code 4 min 10 s}; from an hour on without seconds. */
	public static String duration(double seconds) {
		long whole = Math.round(seconds);
		if (whole < MINUTE) {
			return NLS.bind(Messages.RunWords_seconds, whole);
		}
		if (whole < HOUR) {
			return NLS.bind(Messages.RunWords_minutes, whole / MINUTE, whole % MINUTE);
		}
		long minutes = Math.round(seconds / MINUTE);
		return NLS.bind(Messages.RunWords_hours, minutes / MINUTE, minutes % MINUTE);
	}

	/** Such as {@code 4:10}, for what changes all the time. */
	public static String clock(double seconds) {
		long whole = (long) Math.floor(seconds + 1e-9);
		return whole < HOUR ? String.format("%d:%02d", whole / MINUTE, whole % MINUTE)
				: String.format("%d:%02d:%02d", whole / HOUR, whole % HOUR / MINUTE, whole % MINUTE);
	}

	/** How often somebody changes the tool. */
	public static String stops(int count) {
		return switch (count) {
		case 0 -> Messages.RunWords_noStop;
		case 1 -> Messages.RunWords_oneStop;
		default -> NLS.bind(Messages.RunWords_stops, count);
		};
	}

	/** A length of line in metres. @param mm in mm */
	public static String metres(double mm) {
		return NLS.bind(Messages.RunWords_metres, RunPlan.metres(mm));
	}

	/**
	 * What the machine is at.
	 *
	 * @param name of the tool that is in it, or is put in
	 */
	public static String state(Playback playback, Moment moment, String name) {
		if (moment.isOver()) {
			return Messages.RunWords_over;
		}
		if (moment.kind() == Timeline.Kind.STOP) {
			return NLS.bind(Messages.RunWords_change, name);
		}
		String pattern = switch (moment.kind()) {
		case LOWER -> Messages.RunWords_lower;
		case LIFT -> Messages.RunWords_lift;
		case STROKE -> Messages.RunWords_stroke;
		default -> Messages.RunWords_travel;
		};
		return NLS.bind(pattern, Math.min(playback.size(), moment.stroke() + 1), playback.size());
	}
}
