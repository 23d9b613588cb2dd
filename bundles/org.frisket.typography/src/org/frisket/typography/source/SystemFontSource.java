package org.frisket.typography.source;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.internal.source.FileListing;
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
				FileListing file = FileListing.read(files.get(i));
				fonts.addAll(file.fonts());
				file.broken().ifPresent(broken::add);
				monitor.worked((i + 1.0) / files.size());
			}
			listing = new Listing(List.copyOf(fonts), List.copyOf(broken));
		}
		return listing;
	}
}
