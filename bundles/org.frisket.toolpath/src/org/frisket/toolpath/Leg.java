package org.frisket.toolpath;

import java.util.List;

/**
 * Strokes of one stage by one tool. Where a leg's tool is not that of the leg before, the machine stops for somebody to
 * change it.
 */
public record Leg(Stage stage, String tool, List<Stroke> strokes) {

	public Leg {
		strokes = List.copyOf(strokes);
	}
}
