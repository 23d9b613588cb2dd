package org.frisket.typography.internal.source;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

import org.frisket.geometry.Monitor;

/** Where a platform keeps its fonts. */
public final class FontFolders {

	private static final int DEEPEST = 12;
	private static final List<String> ENDINGS = List.of(".ttf", ".otf", ".ttc", ".otc", ".jhf", ".svg");

	private FontFolders() {
	}

	/** Font folders of this machine and this user; some of them may not exist. */
	public static List<Path> ofThisPlatform() {
		String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
		Path home = Path.of(System.getProperty("user.home", "."));
		if (system.contains("win")) {
			return List.of(folder("WINDIR", Path.of("C:\\Windows")).resolve("Fonts"),
					folder("LOCALAPPDATA", home.resolve("AppData").resolve("Local")).resolve("Microsoft")
							.resolve("Windows").resolve("Fonts"));
		}
		if (system.contains("mac")) {
			return List.of(Path.of("/System/Library/Fonts"), Path.of("/Library/Fonts"),
					home.resolve("Library/Fonts"));
		}
		return List.of(Path.of("/usr/share/fonts"), Path.of("/usr/local/share/fonts"),
				Path.of("/usr/share/hershey-fonts"),
				folder("XDG_DATA_HOME", home.resolve(".local/share")).resolve("fonts"), home.resolve(".fonts"));
	}

	private static Path folder(String variable, Path otherwise) {
		String value = System.getenv(variable);
		return value == null || value.isBlank() ? otherwise : Path.of(value);
	}

	/** Whether a name ends as font files do. */
	public static boolean looksLikeFont(String name) {
		String lower = name.toLowerCase(Locale.ROOT);
		return ENDINGS.stream().anyMatch(lower::endsWith);
	}

	/** Whether a name ends as files of single-line fonts do. */
	public static boolean looksLikeStrokeFont(String name) {
		return name.toLowerCase(Locale.ROOT).endsWith(".jhf") || looksLikeSvg(name);
	}

	public static boolean looksLikeSvg(String name) {
		return name.toLowerCase(Locale.ROOT).endsWith(".svg");
	}

	/** All files below the folders that look like fonts, sorted; folders that cannot be entered are passed by. */
	public static List<Path> files(List<Path> folders, Monitor monitor) {
		TreeSet<Path> files = new TreeSet<>();
		for (Path folder : folders) {
			try {
				Files.walkFileTree(folder, EnumSet.of(FileVisitOption.FOLLOW_LINKS), DEEPEST,
						new Visitor(files, monitor));
			} catch (IOException unreachable) {
				// as if the folder were not there, like those that the visitor passes by
				continue;
			}
		}
		return new ArrayList<>(files);
	}

	private static final class Visitor extends SimpleFileVisitor<Path> {

		private final TreeSet<Path> files;
		private final Monitor monitor;

		Visitor(TreeSet<Path> files, Monitor monitor) {
			this.files = files;
			this.monitor = monitor;
		}

		@Override
		public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
			monitor.check();
			if (attributes.isRegularFile() && looksLikeFont(file.getFileName().toString())) {
				files.add(file);
			}
			return FileVisitResult.CONTINUE;
		}

		@Override
		public FileVisitResult visitFileFailed(Path file, IOException reason) {
			return FileVisitResult.CONTINUE;
		}

		@Override
		public FileVisitResult postVisitDirectory(Path folder, IOException reason) {
			return FileVisitResult.CONTINUE;
		}
	}
}
