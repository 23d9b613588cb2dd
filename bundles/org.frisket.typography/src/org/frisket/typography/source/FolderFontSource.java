package org.frisket.typography.source;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.frisket.geometry.Monitor;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.internal.source.FileListing;
import org.frisket.typography.internal.source.FontFolders;

/**
 * The fonts in a folder and all that lies below it, such as a studio's own. The folder is looked through at every
 * question, so that a file dropped into it is there at once; a file is read again only when its size or its time of
 * change are others.
 */
public final class FolderFontSource implements FontSource {

	private record Known(FontFile file, FileListing listing) {
	}

	private final String id;
	private final Path folder;
	private Map<Path, Known> known = new TreeMap<>();

	/** @param folder need not be there (yet) */
	public FolderFontSource(String id, Path folder) {
		this.id = id;
		this.folder = folder;
	}

	@Override
	public String id() {
		return id;
	}

	@Override
	public synchronized List<FontEntry> fonts(Monitor monitor) {
		rescan(monitor);
		return known.values().stream().flatMap(k -> k.listing().fonts().stream()).toList();
	}

	@Override
	public synchronized List<UnreadableFontException> broken(Monitor monitor) {
		rescan(monitor);
		return known.values().stream().flatMap(k -> k.listing().broken().stream()).toList();
	}

	private void rescan(Monitor monitor) {
		Map<Path, Known> now = new TreeMap<>();
		List<Path> files = FontFolders.files(List.of(folder), monitor);
		for (Path path : files) {
			monitor.check();
			try {
				FontFile file = FontFile.of(path);
				Known before = known.get(path);
				now.put(path, before != null && before.file().equals(file) ? before
						: new Known(file, FileListing.read(path)));
			} catch (IOException gone) {
				// taken away since the folder was listed
				continue;
			}
			monitor.worked((double) now.size() / files.size());
		}
		known = now;
	}
}
