package org.frisket.print.output;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.pdf.PictureObjects;
import org.frisket.geometry.Monitor;
import org.frisket.model.ImageBytes;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;

/** Drawn art of which something cannot stay a vector in the print file: it has dots there, and shows them when enlarged. */
final class PixelArt {

	/** By art, how many of its shapes; it takes a drawing to know, and the same art is asked for with every choice. */
	private static final Map<ImageBytes, Integer> KNOWN = Collections.synchronizedMap(new WeakHashMap<>());

	private PixelArt() {
	}

	/** One finding for each picture that is printed so. @param sheet id */
	static List<Finding> findings(String sheet, List<PrintedArt> printed, Monitor monitor) {
		return printed.stream().filter(art -> art.picture().isPresent()).map(art -> finding(sheet, art, monitor))
				.flatMap(Optional::stream).toList();
	}

	private static Optional<Finding> finding(String sheet, PrintedArt art, Monitor monitor) {
		int shapes = shapes(art.picture().orElseThrow().image(), monitor);
		return shapes == 0 ? Optional.empty()
				: Optional.of(Finding.plain("art-as-pixels", Severity.NOTE, sheet, art.own().bounds().centre(),
						NLS.bind(Messages.PixelArt_shapes, shapes, Math.round(PictureObjects.FINE)), Messages.PixelArt_cure));
	}

	private static int shapes(ImageBytes image, Monitor monitor) {
		Integer known = KNOWN.get(image);
		if (known == null) {
			try {
				known = PictureObjects.shapesAsPixels(image, monitor);
			} catch (IOException e) {
				// what cannot be read is told when it is printed
				known = 0;
			}
			KNOWN.put(image, known);
		}
		return known;
	}
}
