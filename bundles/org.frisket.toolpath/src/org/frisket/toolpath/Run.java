package org.frisket.toolpath;

import java.util.List;
import java.util.stream.Stream;

/** The work of one sheet in the order in which a machine does it. Between strokes the carriage goes straight, lifted. */
public record Run(List<Leg> legs) {

	public Run {
		legs = List.copyOf(legs);
	}

	public Stream<Stroke> strokes() {
		return legs.stream().flatMap(leg -> leg.strokes().stream());
	}

	/** Whether somebody changes the tool before a leg; before the first one it is put in before the start. */
	public boolean stopsBefore(int leg) {
		return leg > 0 && !legs.get(leg).tool().equals(legs.get(leg - 1).tool());
	}
}
