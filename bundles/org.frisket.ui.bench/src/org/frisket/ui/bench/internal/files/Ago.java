package org.frisket.ui.bench.internal.files;

import java.time.Duration;

import org.eclipse.osgi.util.NLS;

/**
 * How long ago something was, in words that need changing the less often the longer ago it is.
 *
 * @param text     such as "12 s ago"
 * @param holdsFor until the text is another
 */
public record Ago(String text, Duration holdsFor) {

	private static final long STEP_S = 10;
	private static final long MINUTE_S = 60;
	private static final long HOUR_S = 3600;

	public static Ago of(Duration elapsed) {
		long seconds = Math.max(0, elapsed.toSeconds());
		if (seconds < STEP_S) {
			return new Ago(Messages.Ago_now, left(seconds, STEP_S));
		}
		if (seconds < MINUTE_S) {
			return new Ago(NLS.bind(Messages.Ago_seconds, seconds / STEP_S * STEP_S), left(seconds, STEP_S));
		}
		if (seconds < HOUR_S) {
			return new Ago(NLS.bind(Messages.Ago_minutes, seconds / MINUTE_S), left(seconds, MINUTE_S));
		}
		return new Ago(NLS.bind(Messages.Ago_hours, seconds / HOUR_S), left(seconds, HOUR_S));
	}

	private static Duration left(long seconds, long step) {
		return Duration.ofSeconds(step - seconds % step);
	}
}
