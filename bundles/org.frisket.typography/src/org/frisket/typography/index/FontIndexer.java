package org.frisket.typography.index;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import org.frisket.geometry.Monitor;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontSource;

/**
 * Goes through font sources and learns what their fonts can do. Runs in the caller's thread, tells the monitor how far
 * it is and stops when it says so; what has been learned by then is kept.
 * <p>
 * A font that cannot be read, and a source that fails, become entries of {@link FontIndex#broken()}; nothing stops the
 * rest.
 */
public final class FontIndexer {

	private final Optional<Path> folder;

	private FontIndexer(Optional<Path> folder) {
		this.folder = folder;
	}

	/** Learns everything anew each time. */
	public static FontIndexer withoutMemory() {
		return new FontIndexer(Optional.empty());
	}

	/** @param folder where to keep what was learned, by the content of the font files; made if need be */
	public static FontIndexer rememberingIn(Path folder) {
		return new FontIndexer(Optional.of(folder));
	}

	/** @see #index(List, Monitor, Consumer) */
	public FontIndex index(List<? extends FontSource> sources, Monitor monitor) {
		return index(sources, monitor, font -> { });
	}

	/**
	 * @param each told of every font as soon as it is known, in the caller's thread
	 * @throws CancellationException if the monitor says so
	 */
	public FontIndex index(List<? extends FontSource> sources, Monitor monitor, Consumer<IndexedFont> each) {
		IndexMemory memory = folder.map(IndexMemory::read).orElseGet(IndexMemory::new);
		try {
			return new Pass(memory, monitor, each).over(sources);
		} finally {
			folder.ifPresent(memory::write);
		}
	}

	private static final class Pass {

		private final IndexMemory memory;
		private final Monitor monitor;
		private final Consumer<IndexedFont> each;
		private final List<IndexedFont> fonts = new ArrayList<>();
		private final List<UnreadableFontException> broken = new ArrayList<>();

		Pass(IndexMemory memory, Monitor monitor, Consumer<IndexedFont> each) {
			this.memory = memory;
			this.monitor = monitor;
			this.each = each;
		}

		FontIndex over(List<? extends FontSource> sources) {
			record Listed(FontEntry entry, String source) {
			}
			List<Listed> listed = new ArrayList<>();
			for (FontSource source : sources) {
				list(source).forEach(entry -> listed.add(new Listed(entry, source.id())));
			}
			for (Listed font : listed) {
				monitor.check();
				try {
					IndexedFont found = new IndexedFont(font.entry(), face(font.entry()), font.source());
					fonts.add(found);
					each.accept(found);
				} catch (UnreadableFontException unreadable) {
					broken.add(unreadable);
				}
				monitor.worked((double) (fonts.size() + broken.size()) / Math.max(1, listed.size()));
			}
			return new FontIndex(fonts, broken);
		}

		private List<FontEntry> list(FontSource source) {
			// a list of files takes a hundredth of what their content takes: it is not worth a share of the progress
			Monitor quiet = monitor::isCancelled;
			try {
				List<FontEntry> entries = source.fonts(quiet);
				broken.addAll(source.broken(quiet));
				return entries;
			} catch (CancellationException cancelled) {
				throw cancelled;
			} catch (RuntimeException | LinkageError failed) {
				broken.add(new UnreadableFontException(source.id(), "this source of fonts failed: " + reason(failed)));
				return List.of();
			}
		}

		private FaceRecord face(FontEntry entry) throws UnreadableFontException {
			String digest = digest(entry);
			IndexMemory.Key key = new IndexMemory.Key(digest, entry.index(), entry.instance());
			Optional<String> reason = memory.broken(key);
			if (reason.isPresent()) {
				throw new UnreadableFontException(entry.place(), reason.get());
			}
			Optional<FaceRecord> known = memory.face(key);
			if (known.isPresent()) {
				return known.get();
			}
			try {
				FaceRecord face = FaceRecord.of(entry.open());
				memory.put(key, face);
				return face;
			} catch (UnreadableFontException unreadable) {
				memory.putBroken(key, unreadable.reason());
				throw unreadable;
			} catch (CancellationException cancelled) {
				throw cancelled;
			} catch (RuntimeException | LinkageError failed) {
				throw new UnreadableFontException(entry.place(), "it cannot be measured: " + reason(failed));
			}
		}

		private String digest(FontEntry entry) throws UnreadableFontException {
			Optional<String> known = entry.file().flatMap(memory::digest);
			if (known.isPresent()) {
				return known.get();
			}
			try {
				String digest = entry.digest();
				entry.file().ifPresent(file -> memory.put(file, digest));
				return digest;
			} catch (IOException unreadable) {
				throw new UnreadableFontException(entry.place(), "reading failed");
			}
		}

		private static String reason(Throwable failed) {
			return failed.getMessage() == null ? failed.getClass().getSimpleName() : failed.getMessage();
		}
	}
}
