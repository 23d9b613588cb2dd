package org.frisket.ui.bench.internal.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;

/**
 * Which job a recovery copy is of.
 *
 * @param original the file the job came from; empty if it has none yet
 * @param stamp    what that file was like when it was read or saved
 * @param number   of a job without a file; 0 for others
 * @param place    where else it is kept, as that place calls itself; empty for files and jobs without one
 * @param mark     what that place was like when the job was taken out or kept
 */
public record Unsaved(Optional<Path> original, FileStamp stamp, int number, String place, String mark) {

	/** A job with a file. */
	public static Unsaved of(Path original, FileStamp stamp) {
		return new Unsaved(Optional.of(original), stamp, 0, "", ""); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** A job that has no file yet. */
	public static Unsaved untitled(int number) {
		return new Unsaved(Optional.empty(), FileStamp.NONE, number, "", ""); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** A job that is kept elsewhere than in a file. */
	public static Unsaved at(String place, String mark) {
		return new Unsaved(Optional.empty(), FileStamp.NONE, 0, place, mark);
	}

	/** Names the copy: the same job always has the same one. */
	String id() {
		return original.map(Path::toString).or(() -> Optional.of(place).filter(key -> !key.isEmpty()))
				.map(name -> UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString())
				.orElse("untitled-" + number); //$NON-NLS-1$
	}
}
