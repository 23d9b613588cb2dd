package org.frisket.orders.paper;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.page.PicturePage;
import org.frisket.page.flow.Figures;
import org.frisket.page.flow.ScaleBar;
import org.frisket.prepare.PreparedJob;

/**
 * A job as a picture for a screen, on white, as its docket shows it.
 *
 * @param image no larger than was asked for
 * @param bar   pixels of the bar by which lengths can be read off it
 * @param text  how long that bar is, and the scale
 */
public record ShownJob(BufferedImage image, int bar, String text) {

	/** What papers take a pixel of a screen for: 1/96 inch, as CSS does. */
	static final int DPI = 96;
	/** Of one such pixel. */
	static final double MM = Figures.MM_PER_INCH / DPI;

	/**
	 * No job is shown larger than it is.
	 *
	 * @param width   of the picture in pixels, at most
	 * @param height  of it
	 * @param density pixels of the picture to one of the screen, 1 or more
	 * @return empty if there is nothing to see yet
	 * @throws IOException if a picture of the job cannot be read, or this installation lacks the font of its pages
	 */
	public static Optional<ShownJob> of(PreparedJob job, int width, int height, int density, Figures figures)
			throws IOException {
		Bounds bounds = job.visibleBounds();
		if (bounds.isEmpty() || width < 1 || height < 1) {
			return Optional.empty();
		}
		// a line has no height, but room for its ink
		double scale = Math.min(1, Math.min(width * MM / Math.max(bounds.width(), MM), height * MM / Math.max(bounds.height(), MM)));
		JobPicture picture = new JobPicture(job, scale);
		try (PicturePage page = new PicturePage(Math.max(MM, Math.min(width * MM, picture.width())),
				Math.max(MM, Math.min(height * MM, picture.height())), DPI * density)) {
			picture.paint(page, 0, 0);
			ScaleBar bar = new ScaleBar(scale, figures);
			return Optional.of(new ShownJob(page.image(), (int) Math.round(bar.width() / MM), bar.text()));
		}
	}
}
