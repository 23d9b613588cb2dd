package org.frisket.prepare.pictures;

import java.lang.ref.SoftReference;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.WeakHashMap;

import org.frisket.model.ImageBytes;

/**
 * What was made of pages of files, the last of each, kept as long as there is room and as somebody has the file itself. Safe
 * for several threads.
 */
final class KeptOfFiles<V> {

	private final Map<ImageBytes, Map<Integer, SoftReference<V>>> kept = Collections.synchronizedMap(new WeakHashMap<>());

	/** Null if there is nothing. */
	V get(ImageBytes bytes, int page) {
		Map<Integer, SoftReference<V>> pages = kept.get(bytes);
		SoftReference<V> found = pages == null ? null : pages.get(page);
		return found == null ? null : found.get();
	}

	void put(ImageBytes bytes, int page, V made) {
		kept.computeIfAbsent(bytes, key -> Collections.synchronizedMap(new HashMap<>())).put(page, new SoftReference<>(made));
	}
}
