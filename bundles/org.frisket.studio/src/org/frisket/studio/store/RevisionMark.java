package org.frisket.studio.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;

/**
 * A small file with another text after every change of the store. The store's own file would not do: opening and closing
 * it writes to it as well, and its time is too coarse on some discs. Whoever looks something up reads the text first: it
 * is then at worst older than what was looked up, which costs another look and misses nothing.
 */
record RevisionMark(Path file) {

	String text() {
		try {
			return Files.readString(file, StandardCharsets.ISO_8859_1);
		} catch (IOException noneYet) {
			return "none";
		}
	}

	/** After a change is kept; that stays kept, even if this cannot be written down. */
	void change() {
		try {
			Files.writeString(file, UUID.randomUUID().toString(), StandardCharsets.ISO_8859_1);
		} catch (IOException notSeenElsewhere) {
			// the disc is full, or the folder was protected just now: others see the change when they open the store
		}
	}
}
