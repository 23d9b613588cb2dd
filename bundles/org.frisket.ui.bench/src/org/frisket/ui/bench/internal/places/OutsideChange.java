package org.frisket.ui.bench.internal.places;

import org.frisket.ui.bench.internal.files.FileStamp;

/** What another program has done to the file of an open job. */
enum OutsideChange {

	NONE, CHANGED, REMOVED;

	/** @param mark what the file was like when it was read or saved here */
	static OutsideChange between(String mark, FileStamp now) {
		if (now.text().equals(mark)) {
			return NONE;
		}
		return now.isFile() ? CHANGED : REMOVED;
	}
}
