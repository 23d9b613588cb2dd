package org.frisket.export.drive;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is mounted on Linux, as {@code /proc/mounts} tells it: proc_pid_mounts(5) and fstab(5). */
final class MountTable {

	/** Where desktops and people mount what can be pulled. */
	private static final List<Path> PLACES = List.of(Path.of("/media"), Path.of("/run/media"), Path.of("/mnt"));
	/** What is no drive: other computers, and what only looks like a file system. */
	private static final Set<String> ELSEWHERE = Set.of("nfs", "nfs4", "cifs", "smb3", "9p", "fuse.sshfs", "autofs", "proc",
			"sysfs", "overlay", "squashfs");

	private MountTable() {
	}

	/** The drives in a table; what is mounted later at the same place hides what was there. */
	static List<Drive> drives(String table) {
		Map<Path, Drive> drives = new LinkedHashMap<>();
		table.lines().map(MountTable::drive).flatMap(Optional::stream).forEach(drive -> drives.put(drive.folder(), drive));
		return new ArrayList<>(drives.values());
	}

	private static Optional<Drive> drive(String line) {
		String[] fields = line.split(" ");
		if (fields.length < 4 || ELSEWHERE.contains(fields[2])) {
			return Optional.empty();
		}
		try {
			Path folder = Path.of(plain(fields[1])).normalize();
			boolean removable = PLACES.stream().anyMatch(place -> folder.startsWith(place) && !folder.equals(place));
			return removable ? Optional.of(new Drive(folder.getFileName().toString(), folder,
					Arrays.stream(fields[3].split(",")).noneMatch("ro"::equals))) : Optional.empty();
		} catch (InvalidPathException e) {
			return Optional.empty();
		}
	}

	/** Spaces and the like stand as a backslash and three octal digits. */
	private static String plain(String field) {
		StringBuilder plain = new StringBuilder();
		for (int i = 0; i < field.length(); i++) {
			if (field.startsWith("\\", i) && i + 4 <= field.length() && field.substring(i + 1, i + 4).matches("[0-3][0-7]{2}")) {
				plain.append((char) Integer.parseInt(field.substring(i + 1, i + 4), 8));
				i += 3;
			} else {
				plain.append(field.charAt(i));
			}
		}
		return plain.toString();
	}
}
