package org.frisket.studio.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Files as this process has left them. One that nobody has touched since is as up to date as it was, and need not be looked
 * into before it is opened. To be used by whoever has the turn.
 */
final class LeftFiles {

	/** In percent: one that has grown by as much since it was looked into is looked into again, for it may have to be tidied. */
	private static final int GROWN = 125;

	private static final Map<Path, Left> LEFT = new ConcurrentHashMap<>();

	/** What changes when a file is written to or replaced. */
	private record Looks(long size, FileTime modified, Object key) {

		static Looks of(Path file) throws IOException {
			BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
			return new Looks(attributes.size(), attributes.lastModifiedTime(), attributes.fileKey());
		}
	}

	/** @param looks null while it is open */
	private record Left(Set<Area> areas, long lookedInto, Looks looks) {
	}

	private LeftFiles() {
	}

	/** Whether these areas of a file are up to date for certain. */
	static boolean isUpToDate(Path file, Set<Area> areas) {
		Left left = LEFT.get(file);
		if (left == null || !left.areas.containsAll(areas)) {
			return false;
		}
		try {
			Looks now = Looks.of(file);
			return now.equals(left.looks) && now.size * 100 < Math.max(TidyFile.SMALL, left.lookedInto) * GROWN;
		} catch (IOException gone) {
			return false;
		}
	}

	/** It was looked into, and these areas are up to date. */
	static void lookedInto(Path file, Set<Area> areas) throws IOException {
		Left before = LEFT.get(file);
		Set<Area> all = new HashSet<>(areas);
		// what it was seen to have is still there if it was left like that
		if (before != null && Looks.of(file).equals(before.looks)) {
			all.addAll(before.areas);
		}
		LEFT.put(file, new Left(Set.copyOf(all), Files.size(file), null));
	}

	/** It is closed here. */
	static void left(Path file) {
		LEFT.computeIfPresent(file, (same, left) -> {
			try {
				return new Left(left.areas, left.lookedInto, Looks.of(file));
			} catch (IOException gone) {
				return null;
			}
		});
	}
}
