package org.frisket.studio.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A small file with another text after every change of the store. The store's own file would not do: opening and closing
 * it writes to it as well, and its time is too coarse on some discs. Whoever looks something up reads the text first: it
 * is then at worst older than what was looked up, which costs another look and misses nothing.
 * <p>
 * It also says how many changes the store has kept. It is written after the store is on the disc, so whenever the program
 * or the machine stops it says as many as the store, or fewer; never more, unless the store has lost some.
 */
record RevisionMark(Path file) {

	/** Always as long, so that one stroke puts it in the place of the one before. What an older Frisket writes counts nothing. */
	private static final String FORM = "%019d %s %s\n";
	private static final Pattern FORMED = Pattern.compile("(\\d{19}) (\\S{36}) \\S{36}\n");

	String text() {
		try {
			return Files.readString(file, StandardCharsets.ISO_8859_1);
		} catch (IOException noneYet) {
			return "none";
		}
	}

	/** What the store has said of itself after its last change; empty if that is not known. */
	Optional<ChangeCount> count() {
		Matcher formed = FORMED.matcher(text());
		return formed.matches() ? Optional.of(new ChangeCount(formed.group(2), Long.parseLong(formed.group(1))))
				: Optional.empty();
	}

	/**
	 * After a change is kept; that stays kept, even if this cannot be written down.
	 *
	 * @param count what the store says of itself
	 */
	void change(ChangeCount count) {
		synchronized (RevisionMark.class) {
			// two threads may come here in the other order than their changes
			long changes = count().filter(there -> there.file().equals(count.file())).map(ChangeCount::changes).orElse(0L);
			String text = FORM.formatted(Math.max(changes, count.changes()), count.file(), UUID.randomUUID());
			try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
				channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.ISO_8859_1)), 0);
				channel.truncate(text.length());
			} catch (IOException notSeenElsewhere) {
				// the disc is full, or the folder was protected just now: others see the change when they open the store
			}
		}
	}
}
