package org.frisket.prepare.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Results by the content they were made from: an edit recomputes only what it touches. Keys are records of values, so
 * equal content gives the same result whichever job or element asks. The least recently used results go first.
 */
public final class ContentCache {

	private final Map<Object, Object> results;
	private int capacity;

	public ContentCache(int capacity) {
		this.capacity = capacity;
		results = new LinkedHashMap<>(16, 0.75f, true) {
			private static final long serialVersionUID = 1L;

			@Override
			protected boolean removeEldestEntry(Map.Entry<Object, Object> eldest) {
				return size() > ContentCache.this.capacity;
			}
		};
	}

	/** Makes room for this many results. With less room than one run needs, the next would find none of them. */
	void holdAtLeast(int count) {
		synchronized (results) {
			capacity = Math.max(capacity, count);
		}
	}

	/** The kept result, or a new one; two threads may compute the same one, of which the first is kept. */
	@SuppressWarnings("unchecked")
	public <R> R get(Object key, Supplier<R> computation) {
		synchronized (results) {
			Object kept = results.get(key);
			if (kept != null) {
				return (R) kept;
			}
		}
		R result = computation.get();
		synchronized (results) {
			Object earlier = results.putIfAbsent(key, result);
			return earlier == null ? result : (R) earlier;
		}
	}
}
