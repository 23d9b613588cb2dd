package org.frisket.export.png;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.page.Png;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;

/** Paints a proof at a stated resolution. */
public final class PngExporter implements Exporter {

	private static final Option DPI = Option.count("dpi", Messages.PngExporter_dpi, 150, 10, 1200);
	private static final Option MARGIN = Option.length("margin", Messages.PngExporter_margin, "10mm", 0, 1000);
	/** 400 MB of pixels; larger proofs are a slip of the finger. */
	private static final long MOST_PIXELS = 100_000_000L;
	private static final int MILLION = 1_000_000;

	@Override
	public List<Option> options() {
		return List.of(DPI, MARGIN);
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		int dpi = options.count(DPI);
		PreparedJob job = handoff.job();
		Bounds drawing = handoff.page(0);
		Caption caption = Caption.of(job.job());
		double margin = options.length(MARGIN);
		double width = Math.max(drawing.width(), caption.width()) + 2 * margin;
		double height = drawing.height() + 2 * margin + caption.height();
		double scale = dpi / 25.4;
		// as numbers that cannot run over: artwork may be of any size
		double wide = Math.ceil(width * scale);
		double high = Math.ceil(height * scale);
		if (!(wide * high <= MOST_PIXELS)) {
			throw new IOException(NLS.bind(Messages.PngExporter_tooMany,
					new Object[] { (long) wide, (long) high, MOST_PIXELS / MILLION }));
		}
		BufferedImage image = new BufferedImage((int) wide, (int) high, BufferedImage.TYPE_INT_RGB);
		try (ProofPainter painter = new ProofPainter(image, scale)) {
			painter.at(margin - drawing.minX(), margin - drawing.minY());
			for (PreparedLayer layer : job.layers()) {
				monitor.check();
				if (layer.layer().isVisible()) {
					painter.layer(layer);
				}
			}
			painter.at(margin, drawing.height() + 2 * margin);
			caption.paint(painter);
		}
		Png.write(image, dpi, out);
	}
}
