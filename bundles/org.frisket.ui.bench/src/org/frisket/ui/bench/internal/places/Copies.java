package org.frisket.ui.bench.internal.places;

import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.bench.internal.files.FileStamp;
import org.frisket.ui.bench.internal.files.Unsaved;

/**
 * Which recovery copy is of the job of which place. Copies of files tell the file and its stamp, as they always have.
 */
public final class Copies {

	private Copies() {
	}

	/** @param mark of what was held when the job was taken out or kept */
	public static Unsaved of(JobPlace place, String mark) {
		if (place instanceof UntitledPlace untitled) {
			return Unsaved.untitled(untitled.number());
		}
		return place.file().map(path -> Unsaved.of(path, FileStamp.of(mark)))
				.orElseGet(() -> Unsaved.at(place.key(), mark));
	}

	/** What {@link JobPlace#key} says of the place. */
	public static String key(Unsaved copy) {
		return copy.original().map(path -> new FilePlace(path).key()).orElseGet(
				() -> copy.place().isEmpty() ? new UntitledPlace(copy.number()).key() : copy.place());
	}

	/** Of what was held when the job was taken out or kept. */
	public static String mark(Unsaved copy) {
		return copy.original().isPresent() ? copy.stamp().text() : copy.mark();
	}
}
