package org.frisket.prepare.pictures;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;

import org.frisket.geometry.Transform;
import org.frisket.model.ImageBytes;
import org.frisket.model.Picture;
import org.frisket.print.picture.Resolution;

/** How many pixels pictures have, if any, remembered for those whose heads were read; safe for several threads. */
public final class PictureSizes {

	private static final Map<ImageBytes, PictureSizes> KEPT = Collections.synchronizedMap(new WeakHashMap<>());

	private final int width;
	private final int height;
	private final boolean drawn;

	private PictureSizes(PictureFile file) {
		width = file.width();
		height = file.height();
		drawn = file.isDrawn();
	}

	static void keep(ImageBytes bytes, PictureFile file) {
		KEPT.put(bytes, new PictureSizes(file));
	}

	/** Whether it has no pixels of its own; not if its file has not been read yet or cannot be. */
	public static boolean isDrawn(ImageBytes bytes) {
		PictureSizes size = bytes == null ? null : KEPT.get(bytes);
		return size != null && size.drawn;
	}

	/**
	 * How fine a picture is in print at the size that it has on the bench, in dots to the inch; the coarser way, if it is
	 * stretched. Empty if its file has not been read yet or cannot be, or has no pixels of its own.
	 *
	 * @param bytes its file
	 * @param place from its own frame into that of the job
	 */
	public static Optional<Double> resolution(ImageBytes bytes, Picture picture, Transform place) {
		PictureSizes size = bytes == null ? null : KEPT.get(bytes);
		double width = picture.getWidth() * Math.hypot(place.a(), place.b());
		double height = picture.getHeight() * Math.hypot(place.c(), place.d());
		return size == null || size.drawn || !(width > 0 && height > 0) ? Optional.empty()
				: Optional.of(Math.min(Resolution.effective(size.width, width), Resolution.effective(size.height, height)));
	}
}
