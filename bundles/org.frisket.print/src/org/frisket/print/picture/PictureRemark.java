package org.frisket.print.picture;

import java.util.Objects;

/**
 * Something to be told of a picture.
 *
 * @param id   the same in every language, such as {@code resolution-low}
 * @param text a sentence in the user's language, with the measured value and the cure
 */
public record PictureRemark(Severity severity, String id, String text) {

	/** How much it matters. */
	public enum Severity {
		/** Nothing can come of it. */
		BLOCKING,
		CAUTION, NOTE
	}

	public PictureRemark {
		Objects.requireNonNull(text);
	}

	public boolean isBlocking() {
		return severity == Severity.BLOCKING;
	}
}
