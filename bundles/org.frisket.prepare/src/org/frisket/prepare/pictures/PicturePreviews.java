package org.frisket.prepare.pictures;

import org.frisket.geometry.Monitor;
import org.frisket.model.ImageBytes;

/**
 * Pictures as large as a screen needs them, made once for all who look at them; they take 16 MB at most, however large the
 * picture is. Safe for several threads.
 */
public final class PicturePreviews {

	/** As wide as most screens. */
	private static final int LONGEST = 2048;

	private static final KeptOfFiles<PictureFile.Decoded> KEPT = new KeptOfFiles<>();

	private PicturePreviews() {
	}

	/** @param page from 1, of a PDF @throws UnreadablePictureException if it cannot be shown */
	public static PictureFile.Decoded of(ImageBytes bytes, int page) throws UnreadablePictureException {
		return of(bytes, page, Monitor.NONE);
	}

	/**
	 * @param page from 1, of a PDF
	 * @throws UnreadablePictureException if it cannot be shown
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static PictureFile.Decoded of(ImageBytes bytes, int page, Monitor monitor) throws UnreadablePictureException {
		PictureFile.Decoded known = KEPT.get(bytes, page);
		if (known == null) {
			known = PictureFile.of(bytes, page).decode(LONGEST, monitor);
			KEPT.put(bytes, page, known);
		}
		return known;
	}
}
