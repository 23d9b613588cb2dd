package org.frisket.imports;

/** A file that cannot be read; the message names the file, the place and the reason. */
public final class UnreadableArtException extends Exception {

	private static final long serialVersionUID = 1L;

	/**
	 * @param file  as {@link ImportSource#name()} has it
	 * @param place in the file, such as {@code line 12}; empty if it is the file as a whole
	 */
	public UnreadableArtException(String file, String place, String reason) {
		super(message(file, place, reason));
	}

	public UnreadableArtException(String file, String place, String reason, Throwable cause) {
		super(message(file, place, reason), cause);
	}

	private static String message(String file, String place, String reason) {
		return place.isEmpty() ? file + ": " + reason : file + ", " + place + ": " + reason;
	}
}
