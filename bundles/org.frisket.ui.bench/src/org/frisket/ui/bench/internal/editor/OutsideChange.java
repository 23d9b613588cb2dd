package org.frisket.ui.bench.internal.editor;

import org.frisket.ui.bench.internal.files.FileStamp;

/** What another program has done to the file of an open job. */
enum OutsideChange {

	NONE, CHANGED, REMOVED;

	static OutsideChange between(FileStamp known, FileStamp now) {
		if (now.equals(known)) {
			return NONE;
		}
		return now.isFile() ? CHANGED : REMOVED;
	}
}
