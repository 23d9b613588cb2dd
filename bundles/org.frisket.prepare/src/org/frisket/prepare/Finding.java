package org.frisket.prepare;

import java.util.Objects;
import java.util.OptionalDouble;

import org.frisket.geometry.Point;

/**
 * One result of makeready: what is wrong, where, by how much, and what helps.
 *
 * @param id       names the kind of finding, such as {@code stroke-too-thin}; stable across versions
 * @param severity how much it matters
 * @param element  id of the element it concerns
 * @param place    where, in mm in the job's frame
 * @param measured what was measured, in mm; empty where nothing is measured
 * @param limit    what is allowed, in mm; empty where there is no limit
 * @param message  what is wrong, one sentence
 * @param cure     what helps, one sentence
 */
public record Finding(String id, Severity severity, String element, Point place, OptionalDouble measured,
		OptionalDouble limit, String message, String cure) {

	public Finding {
		Objects.requireNonNull(id);
		Objects.requireNonNull(severity);
		Objects.requireNonNull(element);
		Objects.requireNonNull(place);
	}

	/** A finding with a measured value and its limit, both in mm. */
	public static Finding measured(String id, Severity severity, String element, Point place, double measured,
			double limit, String message, String cure) {
		return new Finding(id, severity, element, place, OptionalDouble.of(measured), OptionalDouble.of(limit), message,
				cure);
	}

	/** A finding about something that is there or is not. */
	public static Finding plain(String id, Severity severity, String element, Point place, String message,
			String cure) {
		return new Finding(id, severity, element, place, OptionalDouble.empty(), OptionalDouble.empty(), message, cure);
	}

	public boolean isBlocking() {
		return severity == Severity.BLOCKING;
	}
}
