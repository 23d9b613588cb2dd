package org.frisket.geometry;

/** SVG path data that cannot be read, with the place and the reason. */
public final class PathDataException extends IllegalArgumentException {

	private static final long serialVersionUID = 1L;

	private final int position;
	private final String reason;

	PathDataException(int position, String reason) {
		super("path data, character " + position + ": " + reason);
		this.position = position;
		this.reason = reason;
	}

	/** Number of characters before the fault. */
	public int position() {
		return position;
	}

	public String reason() {
		return reason;
	}
}
