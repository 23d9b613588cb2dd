package org.frisket.studio.archive;

import java.io.IOException;

import org.eclipse.osgi.util.NLS;

/** A file that cannot be taken for a studio; the message names it, the place in it and the reason. */
public final class ArchiveException extends IOException {

	private static final long serialVersionUID = 1L;

	ArchiveException(Object file, String reason) {
		super(NLS.bind(Messages.ArchiveException_unusable, file, reason));
	}

	ArchiveException(Object file, String reason, Exception cause) {
		super(NLS.bind(Messages.ArchiveException_unusable, file, reason), cause);
	}
}
