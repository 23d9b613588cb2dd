package org.frisket.orders.exchange;

import java.util.OptionalDouble;

import org.eclipse.osgi.util.NLS;

/**
 * What a job is made of.
 *
 * @param name     by which people know it
 * @param kind     of it
 * @param width    of a sheet in mm; empty, as is the height, if it has no size yet
 * @param height   of a sheet in mm
 * @param grammage in g/m²
 * @param caliper  in mm
 */
public record TicketMedium(String name, Kind kind, OptionalDouble width, OptionalDouble height, OptionalDouble grammage,
		OptionalDouble caliper) {

	/** The kinds of media that a cutting studio has, as XJDF names them. */
	public enum Kind {
		PAPER("Paper"), VINYL("Vinyl"), SELF_ADHESIVE("SelfAdhesive"), FILM("Film"), TEXTILE("Textile");

		private final String word;

		Kind(String word) {
			this.word = word;
		}

		String word() {
			return word;
		}
	}

	/** @throws IllegalArgumentException if a measure is not above zero */
	public TicketMedium {
		above(width);
		above(height);
		above(grammage);
		above(caliper);
	}

	private static void above(OptionalDouble measure) {
		if (measure.isPresent() && !(measure.getAsDouble() > 0 && Double.isFinite(measure.getAsDouble()))) {
			throw new IllegalArgumentException(NLS.bind(Messages.TicketMedium_measure, measure.getAsDouble()));
		}
	}
}
