package org.frisket.prepare.pictures;

import java.io.IOException;

/** A picture that cannot be read; the message is the reason. */
public final class UnreadablePictureException extends IOException {

	private static final long serialVersionUID = 1L;

	UnreadablePictureException(String reason) {
		super(reason);
	}

	UnreadablePictureException(String reason, Throwable cause) {
		super(reason, cause);
	}
}
