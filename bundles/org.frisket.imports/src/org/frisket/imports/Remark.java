package org.frisket.imports;

/**
 * Something of a file that was not taken over as it stands there, or was guessed.
 *
 * @param place  in the file, such as {@code line 12, #leaf}
 * @param reason what it is and what became of it, one sentence
 */
public record Remark(String place, String reason) {

	@Override
	public String toString() {
		return place.isEmpty() ? reason : place + ": " + reason;
	}
}
