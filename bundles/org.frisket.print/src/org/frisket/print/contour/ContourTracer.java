package org.frisket.print.contour;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.print.picture.PictureRemark;
import org.frisket.print.picture.PictureRemark.Severity;
import org.frisket.print.picture.Pixels;
import org.frisket.print.picture.Resolution;

/**
 * From the pixels of a picture to the contour of its art.
 * <p>
 * What is art is told by transparency or by colour ({@code ArtMask}), as a share of each pixel ({@code ColourCoverage}). The
 * edge is followed between the pixels and placed far finer than they are ({@code EdgeTracer}, {@code EdgePlace}), parted at
 * its corners ({@code CornerSearch}) and given lines and cubics ({@code RingsFitter}). The result is cleaned, smoothed,
 * moved, made one.
 * <p>
 * Beside the picture this takes about 1.6 bytes for each pixel, and 16 for each point along the edge.
 */
public final class ContourTracer {

	/** In mm; finer than a blade follows. */
	private static final double FINE = 0.02;
	private static final double EVEN = 0.5;

	private final Pixels pixels;
	private final Resolution resolution;
	private final ContourOptions options;
	private final Monitor monitor;
	private final List<PictureRemark> remarks = new ArrayList<>();

	private ContourTracer(Pixels pixels, Resolution resolution, ContourOptions options, Monitor monitor) {
		this.pixels = pixels;
		this.resolution = resolution;
		this.options = options;
		this.monitor = monitor;
	}

	/** @throws java.util.concurrent.CancellationException if the monitor says so */
	public static TracedContour trace(Pixels pixels, Resolution resolution, ContourOptions options, Monitor monitor) {
		return new ContourTracer(pixels, resolution, options, monitor).traced();
	}

	private TracedContour traced() {
		Backdrop backdrop = options.backdrop().orElseGet(() -> Backdrop.of(pixels));
		Coverage coverage = coverage(backdrop);
		monitor.check();
		double pixel = Math.min(resolution.pixelWidth(), resolution.pixelHeight());
		EdgeTracer tracer = new EdgeTracer(coverage, options.specks() / pixel,
				options.speckArea() / (resolution.pixelWidth() * resolution.pixelHeight()));
		List<Ring> rings = tracer.rings(new Phase(monitor, 0.4, 0.6));
		if (rings == null) {
			remark(Severity.BLOCKING, "edge-too-rough", Messages.ContourTracer_rough);
			return new TracedContour(Region.EMPTY, backdrop, remarks);
		}
		if (holes(backdrop) == Holes.FILL) {
			rings.removeIf(ring -> ring.signedArea() > 0);
		}
		if (rings.isEmpty()) {
			remark(Severity.BLOCKING, "nothing-to-trace", nothing(backdrop, tracer.dropped()));
			return new TracedContour(Region.EMPTY, backdrop, remarks);
		}
		if (tracer.dropped() > 0) {
			remark(Severity.NOTE, "specks-left-out", NLS.bind(Messages.ContourTracer_specks, tracer.dropped()));
		}
		noteArtAtTheEdge(coverage);
		List<Contour> contours = RingsFitter.fit(rings, options.deviation(), new Phase(monitor, 0.6, 0.8));
		Tolerance tolerance = new Tolerance(Math.min(FINE, options.deviation() * pixel / 2));
		Region region = new OutlineCleaner().clean(new Outline(contours).transformed(
				Transform.scaling(resolution.pixelWidth(), resolution.pixelHeight())), FillRule.NON_ZERO, tolerance,
				new Phase(monitor, 0.8, 0.9)).region();
		return new TracedContour(shaped(region, holes(backdrop), tolerance), backdrop, remarks);
	}

	private Coverage coverage(Backdrop backdrop) {
		if (backdrop.transparent()) {
			byte[] share = new byte[pixels.argb().length];
			int least = Coverage.FULL;
			for (int i = 0; i < share.length; i++) {
				int alpha = pixels.argb()[i] >>> 24;
				share[i] = (byte) alpha;
				least = Math.min(least, alpha);
			}
			if (least >= Coverage.HALF) {
				remark(Severity.CAUTION, "nothing-transparent", Messages.ContourTracer_opaque);
			}
			return new Coverage(pixels.width(), pixels.height(), share);
		}
		ArtMask mask = ArtMask.of(pixels, backdrop.rgb(), options.difference(), options.shadow(),
				options.holes() == HoleRule.KEEP, new Phase(monitor, 0, 0.3));
		if (mask.evenShare() < EVEN) {
			remark(Severity.CAUTION, "backdrop-uneven", NLS.bind(Messages.ContourTracer_uneven,
					Math.round(100 * mask.evenShare()), backdrop));
		}
		return ColourCoverage.of(pixels, mask, backdrop.rgb(), new Phase(monitor, 0.3, 0.4));
	}

	private Holes holes(Backdrop backdrop) {
		boolean kept = options.holes() == HoleRule.KEEP || options.holes() == HoleRule.AS_TOLD && backdrop.transparent();
		return kept ? Holes.KEEP : Holes.FILL;
	}

	private Region shaped(Region traced, Holes holes, Tolerance tolerance) {
		Region region = Offset.smoothed(traced, options.smoothing(), tolerance, monitor);
		region = Offset.of(region, options.offset(), Corners.ROUND, holes, tolerance, monitor);
		monitor.worked(0.95);
		if (options.one()) {
			region = OnePiece.of(region, tolerance, monitor);
		}
		monitor.worked(1);
		if (region.isEmpty()) {
			remark(Severity.BLOCKING, "nothing-left", Messages.ContourTracer_nothingLeft);
		}
		return region;
	}

	private String nothing(Backdrop backdrop, int dropped) {
		if (dropped > 0) {
			return NLS.bind(Messages.ContourTracer_onlySpecks, dropped);
		}
		return backdrop.transparent() ? Messages.ContourTracer_transparent
				: NLS.bind(Messages.ContourTracer_sameColour, backdrop);
	}

	/** There the picture was cut off, not the art. */
	private void noteArtAtTheEdge(Coverage coverage) {
		boolean found = false;
		for (int x = 0; x < coverage.width(); x++) {
			found |= coverage.isArt(x, 0) || coverage.isArt(x, coverage.height() - 1);
		}
		for (int y = 0; y < coverage.height(); y++) {
			found |= coverage.isArt(0, y) || coverage.isArt(coverage.width() - 1, y);
		}
		if (found) {
			remark(Severity.NOTE, "art-at-the-edge", Messages.ContourTracer_edge);
		}
	}

	private void remark(Severity severity, String id, String text) {
		remarks.add(new PictureRemark(severity, id, text));
	}
}
