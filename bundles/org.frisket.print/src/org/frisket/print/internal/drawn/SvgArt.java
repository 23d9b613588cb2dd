package org.frisket.print.internal.drawn;

import java.awt.Graphics2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.logging.Level;
import java.util.logging.Logger;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.print.picture.PictureRemark;
import org.frisket.print.picture.PictureRemark.Severity;
import org.frisket.print.picture.SealedXml;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.DocumentLimits;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.renderer.NullPlatformSupport;
import com.github.weisj.jsvg.renderer.output.Output;
import com.github.weisj.jsvg.view.ViewBox;

/**
 * An SVG file, drawn by jsvg. Only what is in the file itself is drawn: pictures, styles and fonts from elsewhere are left
 * out and told of, scripts are never run, of what moves the beginning is seen.
 */
public final class SvgArt implements DrawnArt {

	/** What is wrong is told here; kept, or the level would be forgotten. */
	private static final Logger LOG = Logger.getLogger("com.github.weisj.jsvg");
	/** How deep copies may be of copies. */
	private static final int DEEPEST_COPIES = 15;
	/** Of drawn elements, copies and all. */
	private static final int MOST_DRAWN = 500_000;

	static {
		LOG.setLevel(Level.OFF);
	}

	private final SVGDocument document;
	private final SvgSize size;
	private final List<PictureRemark> remarks;

	private SvgArt(SVGDocument document, SvgSize size, List<PictureRemark> remarks) {
		this.document = document;
		this.size = size;
		this.remarks = List.copyOf(remarks);
	}

	/**
	 * @param decoder for pictures that are kept in it
	 * @throws ArtException if it is damaged, of no sound size, or asks for too much
	 */
	public static SvgArt of(byte[] file, SvgImages.Decoder decoder) throws ArtException {
		SvgScan scan = SvgScan.of(file);
		double width = SvgSize.mm(scan.size().width());
		double height = SvgSize.mm(scan.size().height());
		DrawnArt.requireSize(width, height);
		SvgImages images = new SvgImages(decoder);
		return new SvgArt(document(file, images), scan.size(), remarks(scan, images));
	}

	private static SVGDocument document(byte[] file, SvgImages images) throws ArtException {
		LoaderContext context = LoaderContext.builder().externalResourcePolicy(images).resourceLoader(images)
				.documentLimits(new DocumentLimits(SvgScan.DEEPEST, DEEPEST_COPIES, MOST_DRAWN)).build();
		SVGDocument document = new SVGLoader().load(() -> SealedXml.factory().createXMLEventReader(
				new ByteArrayInputStream(file)), null, context);
		if (document == null) {
			throw new ArtException(NLS.bind(Messages.SvgArt_refused, DEEPEST_COPIES, MOST_DRAWN));
		}
		return document;
	}

	private static String reason(Exception e) {
		return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
	}

	private static List<PictureRemark> remarks(SvgScan scan, SvgImages images) {
		List<PictureRemark> remarks = new ArrayList<>();
		if (!scan.size().told()) {
			remarks.add(new PictureRemark(Severity.CAUTION, "size-assumed", Messages.SvgArt_size));
		}
		if (!scan.outside().isEmpty()) {
			remarks.add(new PictureRemark(Severity.CAUTION, "outside-left-out",
					NLS.bind(Messages.SvgArt_outside, scan.outside().size(), scan.outside().iterator().next())));
		}
		if (images.leftOut() > 0) {
			remarks.add(new PictureRemark(Severity.CAUTION, "pictures-left-out",
					NLS.bind(Messages.SvgArt_pictures, images.leftOut())));
		}
		if (scan.hasForeign()) {
			remarks.add(new PictureRemark(Severity.CAUTION, "foreign-left-out", Messages.SvgArt_foreign));
		}
		if (scan.hasText()) {
			remarks.add(new PictureRemark(Severity.CAUTION, "text-not-outlined", Messages.SvgArt_text));
		}
		if (scan.isMoving()) {
			remarks.add(new PictureRemark(Severity.NOTE, "first-only", Messages.SvgArt_moving));
		}
		return remarks;
	}

	@Override
	public double width() {
		return SvgSize.mm(size.width());
	}

	@Override
	public double height() {
		return SvgSize.mm(size.height());
	}

	@Override
	public List<PictureRemark> remarks() {
		return remarks;
	}

	@Override
	public void draw(Graphics2D graphics, double width, double height, Monitor monitor) throws IOException {
		Graphics2D scaled = (Graphics2D) graphics.create();
		scaled.addRenderingHints(ExactEdges.hints());
		// what has no view box is not fitted to one
		scaled.scale(width / size.width(), height / size.height());
		Output output = Output.createForGraphics(scaled);
		try {
			document.renderWithPlatform(NullPlatformSupport.INSTANCE, WatchedOutput.of(output, new Work(monitor)),
					new ViewBox((float) size.width(), (float) size.height()));
		} catch (CancellationException e) {
			throw e;
		} catch (UncheckedIOException e) {
			throw e.getCause();
		} catch (RuntimeException e) {
			throw new ArtException(NLS.bind(Messages.SvgArt_damaged, reason(e)), e);
		} finally {
			output.dispose();
			scaled.dispose();
		}
	}
}
