package org.frisket.print.register;

import java.util.OptionalDouble;

import org.frisket.geometry.Point;

/**
 * Something about marks or about what was fitted to them.
 *
 * @param id       names the kind of finding; stable across versions
 * @param severity how much it matters
 * @param place    where, in mm on the designed sheet
 * @param measured what was measured, in mm unless the message says otherwise; empty where nothing is
 * @param limit    what is allowed, in the same unit; empty where there is no limit
 * @param message  what is wrong, one sentence
 * @param cure     what helps, one sentence
 */
public record RegisterFinding(String id, Severity severity, Point place, OptionalDouble measured, OptionalDouble limit,
		String message, String cure) {

	/** How much a finding matters. */
	public enum Severity {
		/** Nothing must be cut like this. */
		BLOCKING,
		/** Look before you cut. */
		CAUTION,
		/** Good to know. */
		NOTE
	}

	/** One about something that is there or is not. */
	public static RegisterFinding plain(String id, Severity severity, Point place, String message, String cure) {
		return new RegisterFinding(id, severity, place, OptionalDouble.empty(), OptionalDouble.empty(), message, cure);
	}

	/** One with a measured value and its limit. */
	public static RegisterFinding measured(String id, Severity severity, Point place, double measured, double limit,
			String message, String cure) {
		return new RegisterFinding(id, severity, place, OptionalDouble.of(measured), OptionalDouble.of(limit), message,
				cure);
	}

	public boolean isBlocking() {
		return severity == Severity.BLOCKING;
	}
}
