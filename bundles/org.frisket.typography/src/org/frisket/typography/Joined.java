package org.frisket.typography;

import java.util.List;

/**
 * Text whose letters have been moved together.
 *
 * @param text     with the letters at their new places and the lines at their new widths
 * @param shifts   by how much each letter was moved along the line in mm, in the order of the letters
 * @param loose    numbers of the letters that no movement along the line could join to their word, such as a quotation
 *                 mark after a low letter
 * @param detached numbers of the letters that have a dot, accent or other mark which stays a piece by itself
 */
public record Joined(SetText text, List<Double> shifts, List<Integer> loose, List<Integer> detached) {

	public Joined {
		shifts = List.copyOf(shifts);
		loose = List.copyOf(loose);
		detached = List.copyOf(detached);
	}
}
