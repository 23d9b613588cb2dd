package org.frisket.print.picture;

/** A picture that cannot be used. The message names the file, the place in it where there is one, the reason and the cure. */
public final class UnreadablePictureException extends Exception {

	private static final long serialVersionUID = 1L;

	private final String reason;

	UnreadablePictureException(String file, String reason, Throwable cause) {
		super("“" + file + "”: " + reason, cause);
		this.reason = reason;
	}

	/** The message without the name of the file. */
	public String reason() {
		return reason;
	}
}
