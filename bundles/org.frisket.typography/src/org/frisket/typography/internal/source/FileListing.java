package org.frisket.typography.internal.source;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.face.NamedInstance;
import org.frisket.typography.internal.sfnt.ByteSource;
import org.frisket.typography.internal.sfnt.NameTable;
import org.frisket.typography.internal.sfnt.TableDirectory;
import org.frisket.typography.internal.sfnt.Variations;
import org.frisket.typography.internal.shape.HarfBuzzEngine;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontFile;
import org.frisket.typography.stroke.StrokeFiles;

/**
 * What one file holds: each face of a collection, and of a variable font each style its maker has set up.
 *
 * @param broken why the file could not be read, or not wholly
 */
public record FileListing(List<FontEntry> fonts, Optional<UnreadableFontException> broken) {

	private static final long LARGEST_STROKE_FONT = 16L << 20;

	public FileListing {
		fonts = List.copyOf(fonts);
	}

	/** A face that cannot be read does not keep the others of its collection from being listed. */
	public static FileListing read(Path path) {
		List<FontEntry> fonts = new ArrayList<>();
		UnreadableFontException broken = null;
		String font = path.toString();
		if (FontFolders.looksLikeStrokeFont(font)) {
			return stroke(path, font);
		}
		try (FileChannel channel = FileChannel.open(path)) {
			FontFile file = FontFile.of(path);
			ByteSource source = ByteSource.of(channel);
			int faces = TableDirectory.faces(source, font);
			for (int i = 0; i < faces; i++) {
				try {
					addFace(file, i, TableDirectory.read(source, i, font), fonts);
				} catch (UnreadableFontException face) {
					broken = broken == null ? face : broken;
				}
			}
		} catch (UnreadableFontException unreadable) {
			broken = unreadable;
		} catch (IOException unreadable) {
			broken = new UnreadableFontException(font, "reading failed");
		}
		return new FileListing(fonts, Optional.ofNullable(broken));
	}

	/** Small, and read as a whole. A drawing among the SVG files is no font, and no broken one either. */
	private static FileListing stroke(Path path, String font) {
		try {
			FontFile file = FontFile.of(path);
			if (file.size() > LARGEST_STROKE_FONT) {
				return new FileListing(List.of(), Optional.empty());
			}
			byte[] bytes = Files.readAllBytes(path);
			if (FontFolders.looksLikeSvg(font) && !StrokeFiles.holdsSvgFont(bytes)) {
				return new FileListing(List.of(), Optional.empty());
			}
			return new FileListing(List.of(FontEntry.of(file, 0, FontFace.read(bytes, font).names())),
					Optional.empty());
		} catch (UnreadableFontException unreadable) {
			return new FileListing(List.of(), Optional.of(unreadable));
		} catch (IOException unreadable) {
			return new FileListing(List.of(), Optional.of(new UnreadableFontException(font, "reading failed")));
		}
	}

	private static void addFace(FontFile file, int index, TableDirectory tables, List<FontEntry> fonts)
			throws UnreadableFontException, IOException {
		String fileName = file.path().getFileName().toString();
		NameTable table = NameTable.read(tables);
		FontNames names = table.fontNames(fileName.substring(0, fileName.lastIndexOf('.')));
		fonts.add(FontEntry.of(file, index, names));
		List<NamedInstance> instances = Variations.read(tables, table).instances();
		if (!instances.isEmpty() && HarfBuzzEngine.isAvailable()) {
			for (NamedInstance instance : instances) {
				if (!instance.name().equalsIgnoreCase(names.style())) {
					fonts.add(FontEntry.of(file, index, names, instance));
				}
			}
		}
	}
}
