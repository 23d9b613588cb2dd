package org.frisket.export.drive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The removable drives at hand. Looking for them may take a while: a drive can be slow to answer. */
@FunctionalInterface
public interface Drives {

	/** Those there are now, in the order in which they came. */
	List<Drive> mounted();

	/** Those of this computer. */
	static Drives ofThisComputer() {
		Path table = Path.of("/proc/mounts");
		return Files.isReadable(table) ? ofMountTable(() -> text(table)) : Drives::roots;
	}

	/** Those that a table in the form of {@code /proc/mounts} tells of. */
	static Drives ofMountTable(Supplier<String> table) {
		return () -> MountTable.drives(table.get());
	}

	/** The drive a file lies on, or would. */
	default Optional<Drive> holding(Path file) {
		return mounted().stream().filter(drive -> drive.holds(file)).findFirst();
	}

	private static String text(Path table) {
		try {
			// octets as they are told; names beyond ASCII are in UTF-8 there
			return new String(Files.readAllBytes(table), StandardCharsets.UTF_8);
		} catch (IOException e) {
			return "";
		}
	}

	/** Volumes of macOS and roots of Windows, but for what the system itself lies on. */
	private static List<Drive> roots() {
		List<Path> roots = new ArrayList<>();
		FileSystems.getDefault().getRootDirectories().forEach(roots::add);
		try (Stream<Path> volumes = Files.list(Path.of("/Volumes"))) {
			volumes.sorted().forEach(roots::add);
		} catch (IOException e) {
			// not macOS
		}
		Path system = Path.of(System.getProperty("java.home")).getRoot();
		Path home = Path.of(System.getProperty("user.home")).getRoot();
		return roots.stream().filter(root -> !root.equals(system) && !root.equals(home) && !leadsTo(root, system))
				.filter(Files::isDirectory)
				.map(root -> new Drive(root.getFileName() == null ? root.toString() : root.getFileName().toString(), root,
						Files.isWritable(root)))
				.toList();
	}

	private static boolean leadsTo(Path volume, Path root) {
		try {
			return volume.toRealPath().equals(root);
		} catch (IOException e) {
			return false;
		}
	}
}
