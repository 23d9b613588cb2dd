package org.frisket.print.picture;

import org.eclipse.osgi.util.NLS;

/** Whether there is room for a picture. */
final class Memory {

	/** What a pixel takes while there are two pieces of it, four bytes each. */
	private static final int BYTES_PER_PIXEL = 8;
	/** Of the memory there may be, for one picture: it takes two pieces of half of that, and there is other work. */
	private static final double SHARE = 0.6;
	private static final int MEGABYTE = 1 << 20;

	private Memory() {
	}

	static void check(String name, Head head) throws UnreadablePictureException {
		if (needed(head) > most()) {
			throw shortage(name, head, null);
		}
	}

	static UnreadablePictureException shortage(String name, Head head, OutOfMemoryError cause) {
		return new UnreadablePictureException(name,
				NLS.bind(Messages.PictureDecoder_memory, needed(head) / MEGABYTE, most() / MEGABYTE), cause);
	}

	private static long needed(Head head) {
		return (long) head.width * head.height * BYTES_PER_PIXEL;
	}

	private static long most() {
		return (long) (SHARE * Runtime.getRuntime().maxMemory());
	}
}
