package org.frisket.typography;

import java.util.Objects;

/** A font that cannot be read; the message names it and says why, in one sentence fit for the user. */
public final class UnreadableFontException extends Exception {

	private static final long serialVersionUID = 1;

	private final String font;
	private final String reason;

	/**
	 * @param font   file, resource or other name by which the user knows the font
	 * @param reason what is wrong with it, without the name
	 */
	public UnreadableFontException(String font, String reason) {
		super("Font " + font + " cannot be read: " + reason);
		this.font = Objects.requireNonNull(font);
		this.reason = Objects.requireNonNull(reason);
	}

	public String font() {
		return font;
	}

	public String reason() {
		return reason;
	}
}
