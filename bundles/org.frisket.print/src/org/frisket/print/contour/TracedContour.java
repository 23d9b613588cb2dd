package org.frisket.print.contour;

import java.util.List;

import org.frisket.geometry.Region;
import org.frisket.print.picture.PictureRemark;

/**
 * The contour of a picture.
 *
 * @param region   in mm from the picture's top left corner; empty if there is nothing to cut out
 * @param backdrop what was taken as no art
 * @param remarks  what is to be told of it
 */
public record TracedContour(Region region, Backdrop backdrop, List<PictureRemark> remarks) {

	public TracedContour {
		remarks = List.copyOf(remarks);
	}

	public boolean isBlocked() {
		return remarks.stream().anyMatch(PictureRemark::isBlocking);
	}
}
