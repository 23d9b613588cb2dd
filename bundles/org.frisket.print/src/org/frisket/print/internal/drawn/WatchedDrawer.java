package org.frisket.print.internal.drawn;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;
import org.eclipse.osgi.util.NLS;

/** Draws a page, each operator being a step of the work, and refuses pictures that would take all the memory there is. */
final class WatchedDrawer extends PageDrawer {

	private static final long MOST_PIXELS = 100_000_000;
	private static final long MILLION = 1_000_000;

	private final Work work;

	WatchedDrawer(PageDrawerParameters parameters, Work work) throws IOException {
		super(parameters);
		this.work = work;
	}

	@Override
	protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
		work.step();
		super.processOperator(operator, operands);
	}

	@Override
	public void drawImage(PDImage image) throws IOException {
		if ((long) image.getWidth() * image.getHeight() > MOST_PIXELS) {
			// a checked one would be passed over
			throw new UncheckedIOException(new ArtException(NLS.bind(Messages.WatchedDrawer_picture,
					new Object[] { image.getWidth(), image.getHeight(), MOST_PIXELS / MILLION })));
		}
		super.drawImage(image);
	}
}
