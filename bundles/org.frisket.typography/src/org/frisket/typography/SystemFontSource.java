package org.frisket.typography;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.typography.internal.sfnt.ByteSource;
import org.frisket.typography.internal.sfnt.NameTable;
import org.frisket.typography.internal.sfnt.TableDirectory;
import org.frisket.typography.internal.source.FontFolders;

/** The fonts in the platform's font folders, or in folders of the caller's choice. They are looked for once. */
public final class SystemFontSource implements FontSource {

	private record Listing(List<FontEntry> fonts, List<UnreadableFontException> broken) {
	}

	private final String id;
	private final List<Path> folders;
	private Listing listing;

	/** The folders of this machine and this user. */
	public SystemFontSource() {
		this("system", FontFolders.ofThisPlatform());
	}

	/** @param folders searched with all that lies below them; missing ones do no harm */
	public SystemFontSource(String id, List<Path> folders) {
		this.id = id;
		this.folders = List.copyOf(folders);
	}

	@Override
	public String id() {
		return id;
	}

	@Override
	public List<FontEntry> fonts(Monitor monitor) {
		return listing(monitor).fonts();
	}

	@Override
	public List<UnreadableFontException> broken(Monitor monitor) {
		return listing(monitor).broken();
	}

	/** Forgets what was found, so that the next question looks again. */
	public synchronized void refresh() {
		listing = null;
	}

	private synchronized Listing listing(Monitor monitor) {
		if (listing == null) {
			List<FontEntry> fonts = new ArrayList<>();
			List<UnreadableFontException> broken = new ArrayList<>();
			List<Path> files = FontFolders.files(folders, monitor);
			for (int i = 0; i < files.size(); i++) {
				monitor.check();
				try {
					fonts.addAll(list(files.get(i)));
				} catch (UnreadableFontException unreadable) {
					broken.add(unreadable);
				} catch (IOException unreadable) {
					broken.add(new UnreadableFontException(files.get(i).toString(), "reading failed"));
				}
				monitor.worked((i + 1.0) / files.size());
			}
			listing = new Listing(List.copyOf(fonts), List.copyOf(broken));
		}
		return listing;
	}

	private static List<FontEntry> list(Path file) throws UnreadableFontException, IOException {
		try (FileChannel channel = FileChannel.open(file)) {
			ByteSource source = ByteSource.of(channel);
			String font = file.toString();
			String fileName = file.getFileName().toString();
			String stem = fileName.substring(0, fileName.lastIndexOf('.'));
			List<FontEntry> entries = new ArrayList<>();
			int faces = TableDirectory.faces(source, font);
			for (int i = 0; i < faces; i++) {
				FontNames names = NameTable.read(TableDirectory.read(source, i, font)).fontNames(stem);
				int index = i;
				entries.add(new FontEntry(names, font, () -> FontFace.read(file, index),
						() -> FontFace.digest(Files.readAllBytes(file))));
			}
			return entries;
		}
	}
}
