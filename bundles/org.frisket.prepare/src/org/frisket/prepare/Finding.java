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
 * @param measured what was measured, in the unit; empty where nothing is measured
 * @param limit    what is allowed, in the unit; empty where there is no limit
 * @param unit     of both
 * @param more     how many others of the same kind, on the same element, are not told one by one
 * @param message  what is wrong, one sentence
 * @param cure     what helps, one sentence
 */
public record Finding(String id, Severity severity, String element, Point place, OptionalDouble measured,
		OptionalDouble limit, Unit unit, int more, String message, String cure) {

	public Finding {
		Objects.requireNonNull(id);
		Objects.requireNonNull(severity);
		Objects.requireNonNull(element);
		Objects.requireNonNull(place);
		Objects.requireNonNull(unit);
	}

	/** A finding with a measured value and its limit, both in mm. */
	public static Finding measured(String id, Severity severity, String element, Point place, double measured,
			double limit, String message, String cure) {
		return measured(id, severity, element, place, measured, limit, Unit.MM, message, cure);
	}

	/** A finding with a measured value and its limit. */
	public static Finding measured(String id, Severity severity, String element, Point place, double measured,
			double limit, Unit unit, String message, String cure) {
		return new Finding(id, severity, element, place, OptionalDouble.of(measured), OptionalDouble.of(limit), unit, 0,
				message, cure);
	}

	/** A finding about something that is there or is not. */
	public static Finding plain(String id, Severity severity, String element, Point place, String message,
			String cure) {
		return new Finding(id, severity, element, place, OptionalDouble.empty(), OptionalDouble.empty(), Unit.MM, 0,
				message, cure);
	}

	/** This one, standing for others of its kind too. @param message that says so */
	public Finding standingFor(int others, String newMessage) {
		return new Finding(id, severity, element, place, measured, limit, unit, others, newMessage, cure);
	}

	public boolean isBlocking() {
		return severity == Severity.BLOCKING;
	}
}
