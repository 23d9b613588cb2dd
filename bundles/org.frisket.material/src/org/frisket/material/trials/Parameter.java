package org.frisket.material.trials;

import java.util.Locale;
import java.util.Optional;

/** What is set before a line is worked. Stored by name. */
public enum Parameter {
	/** How far the blade stands out of its holder, in mm. */
	EXPOSURE,
	/** In the machine's steps. */
	PRESSURE,
	/** In the machine's steps. */
	SPEED,
	/** How often a line is gone over. */
	PASSES;

	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}

	public static Optional<Parameter> of(String word) {
		for (Parameter each : values()) {
			if (each.word().equals(word)) {
				return Optional.of(each);
			}
		}
		return Optional.empty();
	}
}
