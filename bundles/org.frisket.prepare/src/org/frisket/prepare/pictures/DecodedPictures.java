package org.frisket.prepare.pictures;

import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.model.ImageBytes;
import org.frisket.print.picture.Pixels;

/**
 * All pixels of the pictures that were traced last, kept as long as there is room: while the edge of one is set, it is
 * traced again and again. Whoever only shows a picture takes {@link PicturePreviews}. Safe for several threads.
 */
public final class DecodedPictures {

	private static final KeptOfFiles<Whole> KEPT = new KeptOfFiles<>();

	/** @param damage what the file lacks, as its decoder says it; empty for a sound one */
	public record Whole(Pixels pixels, Optional<String> damage) {
	}

	private DecodedPictures() {
	}

	/**
	 * @param page  from 1, of a PDF
	 * @param width in print, mm; what has no pixels of its own is drawn as fine as is usual for it
	 * @throws UnreadablePictureException if it cannot be decoded
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Whole of(ImageBytes bytes, int page, double width, Monitor monitor) throws UnreadablePictureException {
		PictureFile file = PictureFile.of(bytes, page).drawnFor(width);
		Whole known = known(bytes, file);
		return known == null ? decoded(bytes, file, monitor) : known;
	}

	private static Whole known(ImageBytes bytes, PictureFile file) {
		Whole kept = KEPT.get(bytes, file.page());
		return kept != null && kept.pixels().width() == file.width() && kept.pixels().height() == file.height() ? kept : null;
	}

	private static Whole decoded(ImageBytes bytes, PictureFile file, Monitor monitor) throws UnreadablePictureException {
		synchronized (PictureFile.ONE_AT_A_TIME) {
			monitor.check();
			Whole known = known(bytes, file);
			if (known == null) {
				String[] damage = new String[1];
				Pixels pixels = file.pixels(monitor, reason -> damage[0] = reason);
				known = new Whole(pixels, Optional.ofNullable(damage[0]));
				KEPT.put(bytes, file.page(), known);
			}
			return known;
		}
	}
}
