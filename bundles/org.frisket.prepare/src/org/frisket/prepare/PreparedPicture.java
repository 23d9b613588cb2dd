package org.frisket.prepare;

import org.frisket.geometry.Transform;
import org.frisket.model.ImageBytes;
import org.frisket.prepare.pictures.PictureFile;
import org.frisket.prepare.pictures.UnreadablePictureException;

/**
 * A picture that is to be printed.
 *
 * @param image its file
 * @param page  of its file, from 1
 * @param place takes the unit square, y downwards, to where the picture lies in the job's frame
 */
public record PreparedPicture(ImageBytes image, int page, Transform place) {

	/** The first page. */
	public PreparedPicture(ImageBytes image, Transform place) {
		this(image, 1, place);
	}

	/** @throws UnreadablePictureException if it cannot be read any more */
	public PictureFile file() throws UnreadablePictureException {
		return PictureFile.of(image, page);
	}

	/** In mm, along its rows. */
	public double width() {
		return Math.hypot(place.a(), place.b());
	}

	/** In mm, along its columns. */
	public double height() {
		return Math.hypot(place.c(), place.d());
	}

	/** Its longer side, in mm. */
	public double longest() {
		return Math.max(width(), height());
	}
}
