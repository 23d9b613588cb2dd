package org.frisket.prepare;

import org.frisket.geometry.Transform;
import org.frisket.model.ImageBytes;

/**
 * A picture of pixels that is to be printed.
 *
 * @param image its file
 * @param place takes the unit square, y downwards, to where the picture lies in the job's frame
 */
public record PreparedPicture(ImageBytes image, Transform place) {
}
