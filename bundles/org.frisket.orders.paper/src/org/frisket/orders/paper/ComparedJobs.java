package org.frisket.orders.paper;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.page.PicturePage;
import org.frisket.page.flow.Figures;
import org.frisket.page.flow.ScaleBar;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;

/**
 * Two states of one job as pictures for a screen, on white. Both show the same frame in the same scale: what has not
 * moved is at the same place in both.
 *
 * @param mine   one state
 * @param theirs the other
 * @param bar    pixels of the bar by which lengths can be read off both
 * @param text   how long that bar is, and the scale
 */
public record ComparedJobs(Side mine, Side theirs, int bar, String text) {

	private static final double ROUNDING = 1e-6;

	/**
	 * One state.
	 *
	 * @param image  as large as that of the other
	 * @param places of what was asked for, in its order; what neither picture shows is missing
	 */
	public record Side(BufferedImage image, List<Place> places) {
	}

	/**
	 * Where something lies, in pixels of the screen.
	 *
	 * @param element its id
	 * @param there   whether it is on this side; if not, this is where it lies on the other
	 */
	public record Place(String element, double x, double y, double width, double height, boolean there) {
	}

	/**
	 * The larger of the two fills the room; neither is shown larger than it is.
	 *
	 * @param elements ids of elements whose places are wanted
	 * @param width    of each picture in pixels, at most
	 * @param height   of it
	 * @param density  pixels of a picture to one of the screen, 1 or more
	 * @return empty if there is nothing to see of either
	 * @throws IOException if a picture of the job cannot be read, or this installation lacks the font of its pages
	 */
	public static Optional<ComparedJobs> of(PreparedJob mine, PreparedJob theirs, Collection<String> elements,
			int width,
			int height, int density, Figures figures) throws IOException {
		Bounds frame = mine.visibleBounds().with(theirs.visibleBounds());
		if (frame.isEmpty() || width < 1 || height < 1) {
			return Optional.empty();
		}
		double mm = ShownJob.MM;
		double scale = Math.min(1,
				Math.min(width * mm / Math.max(frame.width(), mm), height * mm / Math.max(frame.height(), mm)));
		ScaleBar bar = new ScaleBar(scale, figures);
		return Optional.of(new ComparedJobs(side(mine, theirs, elements, frame, scale, density),
				side(theirs, mine, elements, frame, scale, density), (int) Math.round(bar.width() / mm), bar.text()));
	}

	private static Side side(PreparedJob job, PreparedJob other, Collection<String> elements, Bounds frame,
			double scale,
			int density) throws IOException {
		double mm = ShownJob.MM;
		try (PicturePage page = new PicturePage(side(frame.width() * scale), side(frame.height() * scale),
				ShownJob.DPI * density)) {
			Bounds own = job.visibleBounds();
			if (!own.isEmpty()) {
				new JobPicture(job, scale).paint(page, (own.minX() - frame.minX()) * scale,
						(own.minY() - frame.minY()) * scale);
			}
			List<Place> places = new ArrayList<>();
			for (String element : elements) {
				Optional<Bounds> here = bounds(job, element);
				here.or(() -> bounds(other, element)).ifPresent(box -> places.add(new Place(element,
						(box.minX() - frame.minX()) * scale / mm, (box.minY() - frame.minY()) * scale / mm,
						box.width() * scale / mm, box.height() * scale / mm, here.isPresent())));
			}
			return new Side(page.image(), places);
		}
	}

	/** Of a page, in mm: pixels are counted up, and it must not be one more for the sake of a rounding error. */
	private static double side(double length) {
		return Math.max(ShownJob.MM, length - ROUNDING);
	}

	/** Of an element that can be seen. */
	private static Optional<Bounds> bounds(PreparedJob job, String element) {
		return job.layers().stream().flatMap(layer -> layer.shown().stream())
				.filter(each -> element.equals(each.element().getId())).map(PreparedElement::bounds)
				.filter(box -> !box.isEmpty()).findFirst();
	}
}
