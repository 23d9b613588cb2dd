package org.frisket.prepare.pictures;

import java.lang.ref.SoftReference;
import java.util.Collections;
import java.util.Map;
import java.util.WeakHashMap;

import org.frisket.model.ImageBytes;

/** Pictures as large as a screen needs them, decoded once for all who look at them. Safe for several threads. */
public final class PicturePreviews {

	/** As wide as most screens. */
	private static final int LONGEST = 2048;

	/** Kept as long as there is room, and as somebody has the file itself. */
	private static final Map<ImageBytes, SoftReference<PictureFile.Decoded>> KEPT = Collections
			.synchronizedMap(new WeakHashMap<>());

	private PicturePreviews() {
	}

	/** @throws UnreadablePictureException if it cannot be shown */
	public static PictureFile.Decoded of(ImageBytes bytes) throws UnreadablePictureException {
		SoftReference<PictureFile.Decoded> kept = KEPT.get(bytes);
		PictureFile.Decoded known = kept == null ? null : kept.get();
		if (known == null) {
			known = PictureFile.of(bytes).decode(LONGEST);
			KEPT.put(bytes, new SoftReference<>(known));
		}
		return known;
	}
}
