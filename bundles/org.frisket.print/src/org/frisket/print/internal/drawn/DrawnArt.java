package org.frisket.print.internal.drawn;

import java.awt.Graphics2D;
import java.io.IOException;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Length;
import org.frisket.geometry.Monitor;
import org.frisket.print.picture.PictureRemark;

/** Art that is drawn at any size. It does not change; several threads may draw it. */
public interface DrawnArt {

	/** In mm. */
	double width();

	/** In mm. */
	double height();

	/** What is to be told of it whatever it is drawn for. */
	List<PictureRemark> remarks();

	/**
	 * Draws it with its upper left corner at the origin, on a ground that nothing was drawn on yet.
	 *
	 * @param width  of all of it, in units of the graphics; so is the height
	 * @throws IOException if it is damaged or asks for too much
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	void draw(Graphics2D graphics, double width, double height, Monitor monitor) throws IOException;

	/** Sides beyond which a file is in error, not large or small. @throws ArtException if it has such */
	static void requireSize(double width, double height) throws ArtException {
		double least = 0.1;
		double most = 10_000;
		if (!(Math.min(width, height) >= least && Math.max(width, height) <= most)) {
			throw new ArtException(NLS.bind(Messages.DrawnArt_size, new Object[] { Length.text(width, 2),
					Length.text(height, 2), Length.text(least, 1), Length.text(most, 0) }));
		}
	}
}
