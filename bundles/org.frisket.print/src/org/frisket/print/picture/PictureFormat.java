package org.frisket.print.picture;

/** Kinds of files that are read. */
public enum PictureFormat {
	PNG("image/png"), JPEG("image/jpeg"), GIF("image/gif"), BMP("image/bmp"), TIFF("image/tiff"),
	/** RFC 9649; of one picture, not of several that move. */
	WEBP("image/webp"),
	/** Drawn at any size, as {@link #PDF} is. */
	SVG("image/svg+xml"), PDF("application/pdf");

	private final String mediaType;

	PictureFormat(String mediaType) {
		this.mediaType = mediaType;
	}

	/** As IANA lists it. */
	public String mediaType() {
		return mediaType;
	}

	/** Whether it has no pixels of its own. */
	public boolean isDrawn() {
		return this == SVG || this == PDF;
	}
}
