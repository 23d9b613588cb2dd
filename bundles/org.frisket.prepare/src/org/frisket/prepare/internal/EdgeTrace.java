package org.frisket.prepare.internal;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.model.BackdropRule;
import org.frisket.model.PictureEdge;
import org.frisket.prepare.Severity;
import org.frisket.print.contour.Backdrop;
import org.frisket.print.contour.ContourOptions;
import org.frisket.print.contour.ContourTracer;
import org.frisket.print.contour.HoleRule;
import org.frisket.print.contour.TracedContour;
import org.frisket.print.picture.PictureRemark;
import org.frisket.print.picture.Pixels;
import org.frisket.print.picture.Resolution;

/**
 * The contour of a picture as its edge is to be found.
 *
 * @param region in mm of the picture's own frame; empty if there is none
 */
record EdgeTrace(Region region, List<Shape.Remark> remarks) {

	private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");
	private static final int HEX = 16;
	private static final double MM_PER_INCH = 25.4;
	/** Beyond it nothing is told apart: a ΔE*ab of 100 lies between black and white. */
	private static final double MOST_DIFFERENCE = 100;
	private static final double METRE = 1000;

	/**
	 * @param width of the picture in mm, as is {@code height}
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	static EdgeTrace of(Pixels pixels, double width, double height, PictureEdge edge, Monitor monitor) {
		Point centre = new Point(width / 2, height / 2);
		double x = pixels.width() * MM_PER_INCH / width;
		double y = pixels.height() * MM_PER_INCH / height;
		if (!Resolution.isSound(x) || !Resolution.isSound(y)) {
			return new EdgeTrace(Region.EMPTY, List.of(new Shape.Remark("picture-edge-size", Severity.BLOCKING, centre,
					NLS.bind(Messages.EdgeTrace_size, Math.round(Math.min(x, y))), Messages.EdgeTrace_sizeCure)));
		}
		TracedContour traced = ContourTracer.trace(pixels, new Resolution(x, y, Resolution.Source.GIVEN), options(edge), monitor);
		return new EdgeTrace(traced.region(), traced.remarks().stream().map(remark -> told(remark, centre)).toList());
	}

	/** What a file says beyond what can be is taken as the nearest that can. */
	private static ContourOptions options(PictureEdge edge) {
		ContourOptions options = ContourOptions.USUAL
				.colours(within(edge.getDifference(), 0, MOST_DIFFERENCE), within(edge.getShadow(), 0, MOST_DIFFERENCE))
				.without(within(edge.getSpecks(), 0, METRE), 0).holes(switch (edge.getHoles()) {
				case AS_TOLD -> HoleRule.AS_TOLD;
				case KEEP -> HoleRule.KEEP;
				case FILL -> HoleRule.FILL;
				}).smoothed(within(edge.getSmoothing(), 0, METRE)).moved(within(edge.getBorder(), -METRE, METRE))
				.inOnePiece(edge.isWhole());
		if (edge.getBackdrop() == BackdropRule.TRANSPARENT) {
			return options.on(Backdrop.TRANSPARENT);
		}
		boolean told = edge.getBackdrop() == BackdropRule.COLOUR && edge.getColour() != null
				&& COLOUR.matcher(edge.getColour()).matches();
		return told ? options.on(Backdrop.colour(Integer.parseInt(edge.getColour().substring(1), HEX))) : options;
	}

	private static double within(double value, double least, double most) {
		return Double.isNaN(value) ? Math.max(least, 0) : Math.max(least, Math.min(most, value));
	}

	/** What is to be done stands behind a semicolon there. */
	private static Shape.Remark told(PictureRemark remark, Point place) {
		int parted = remark.text().indexOf("; ");
		String what = parted < 0 ? remark.text() : remark.text().substring(0, parted);
		String cure = parted < 0 ? Messages.EdgeTrace_cure : sentence(remark.text().substring(parted + 2));
		return new Shape.Remark("picture-" + remark.id(), switch (remark.severity()) {
		case BLOCKING -> Severity.BLOCKING;
		case CAUTION -> Severity.CAUTION;
		case NOTE -> Severity.NOTE;
		}, place, sentence(what), cure);
	}

	private static String sentence(String text) {
		return text.substring(0, 1).toUpperCase(Locale.getDefault()) + text.substring(1) + '.';
	}
}
