package org.frisket.print.picture;

import java.io.ByteArrayOutputStream;

/** What the head of a file says, as it is found. Sizes are those of the stored rows, not turned. */
final class Head {

	int width;
	int height;
	/** As TIFF and EXIF number them: where the first row and the first column are seen, 1 for the top and the left. */
	int orientation = 1;
	/** Dots to the inch; 0 if nothing is said. */
	double dpiX;
	double dpiY;
	int frames = 1;
	Inks inks = Inks.DECODED;
	/** Whether more of a value means less ink. */
	boolean inverted;
	/** Where the first frame lies in the picture. */
	int left;
	int top;
	final ByteArrayOutputStream profile = new ByteArrayOutputStream();

	void dpi(double x, double y) {
		if (Resolution.isSound(x) && Resolution.isSound(y)) {
			dpiX = x;
			dpiY = y;
		}
	}

	boolean isTurned() {
		return orientation > 4;
	}

	/** Of the same picture when only every so many of its rows and columns are read. */
	Head reduced(int step) {
		Head reduced = new Head();
		reduced.width = (width + step - 1) / step;
		reduced.height = (height + step - 1) / step;
		reduced.orientation = orientation;
		reduced.inks = inks;
		reduced.inverted = inverted;
		reduced.profile.writeBytes(profile.toByteArray());
		return reduced;
	}

	/** Of the same picture when its reader has used the profile. */
	Head inSrgb() {
		Head used = reduced(1);
		used.profile.reset();
		return used;
	}

	void orientation(int found) {
		if (found >= 1 && found <= 8) {
			orientation = found;
		}
	}
}
