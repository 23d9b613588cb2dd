package org.frisket.prepare.pictures;

import java.lang.ref.SoftReference;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;

import org.frisket.geometry.Monitor;
import org.frisket.model.ImageBytes;
import org.frisket.print.picture.Pixels;

/**
 * All pixels of the pictures that were decoded last, kept as long as there is room: while the edge of one is set, it is
 * traced again and again. Safe for several threads.
 */
public final class DecodedPictures {

	private static final Map<ImageBytes, SoftReference<Whole>> KEPT = Collections.synchronizedMap(new WeakHashMap<>());

	/** @param damage what the file lacks, as its decoder says it; empty for a sound one */
	public record Whole(Pixels pixels, Optional<String> damage) {
	}

	private DecodedPictures() {
	}

	/**
	 * @throws UnreadablePictureException if it cannot be decoded
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Whole of(ImageBytes bytes, Monitor monitor) throws UnreadablePictureException {
		return of(bytes, PictureFile.of(bytes), monitor);
	}

	static Whole of(ImageBytes bytes, PictureFile file, Monitor monitor) throws UnreadablePictureException {
		Whole known = known(bytes);
		return known == null ? decoded(bytes, file, monitor) : known;
	}

	private static Whole known(ImageBytes bytes) {
		SoftReference<Whole> kept = KEPT.get(bytes);
		return kept == null ? null : kept.get();
	}

	/** One at a time: each may take most of the memory while it is decoded. */
	private static synchronized Whole decoded(ImageBytes bytes, PictureFile file, Monitor monitor)
			throws UnreadablePictureException {
		monitor.check();
		Whole known = known(bytes);
		if (known == null) {
			String[] damage = new String[1];
			Pixels pixels = file.pixels(monitor, reason -> damage[0] = reason);
			known = new Whole(pixels, Optional.ofNullable(damage[0]));
			KEPT.put(bytes, new SoftReference<>(known));
		}
		return known;
	}
}
