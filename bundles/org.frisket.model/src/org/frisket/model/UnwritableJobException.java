package org.frisket.model;

import java.io.IOException;

/** A job that cannot be written, for the sake of its contents or of the place it should go to. */
public class UnwritableJobException extends IOException {

	private static final long serialVersionUID = 1L;

	private final String reason;

	/**
	 * @param file   where it should go; null if it was written to memory
	 * @param reason in plain words, to follow "file: "
	 */
	public UnwritableJobException(String file, String reason, Throwable cause) {
		super(file == null ? reason : "could not write " + file + ": " + reason, cause);
		this.reason = reason;
	}

	public String reason() {
		return reason;
	}
}
