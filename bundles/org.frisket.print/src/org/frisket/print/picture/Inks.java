package org.frisket.print.picture;

/** What the stored values of a pixel stand for, beside its transparency. */
enum Inks {
	/** A palette, or whatever the decoder makes sRGB of. */
	DECODED(0),
	GREY(1), RGB(3),
	/** JPEG's brightness and two differences of colour (ITU-T T.871). */
	YCC(3), CMYK(4),
	/** The same of the complements of cyan, magenta and yellow as they are stored, and black beside it. */
	YCCK(4);

	private final int channels;

	Inks(int channels) {
		this.channels = channels;
	}

	/** 0 where the decoder decides. */
	int channels() {
		return channels;
	}
}
