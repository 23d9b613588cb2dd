package org.frisket.imports;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;

import org.eclipse.osgi.util.NLS;

/**
 * Opens files up to a size. What comes out of a file is held in memory; so importers refuse what may be more than there is,
 * and name the limit.
 */
public final class LargestFile {

	/** In bytes: whole jobs for a studio's machines are a hundredth of it. Its curves take up to twelve times that. */
	public static final long BYTES = 64L << 20;

	private static final int BUFFER = 1 << 16;
	private static final int[] GZIP = { 0x1f, 0x8b };

	private LargestFile() {
	}

	/**
	 * From the first byte on; buffered.
	 *
	 * @throws UnreadableArtException if the file is larger
	 */
	public static InputStream open(ImportSource source) throws IOException, UnreadableArtException {
		check(source, source.size());
		return new BufferedInputStream(source.open(), BUFFER);
	}

	/**
	 * The same of what a file holds that is packed by gzip; other files as they are.
	 *
	 * @throws UnreadableArtException if the file, or what it holds, is larger, or it is damaged
	 */
	public static InputStream openUnpacked(ImportSource source) throws IOException, UnreadableArtException {
		InputStream in = open(source);
		boolean packed;
		try {
			in.mark(GZIP.length);
			packed = in.read() == GZIP[0] && in.read() == GZIP[1];
			in.reset();
			if (!packed) {
				return in;
			}
		} catch (IOException e) {
			in.close();
			throw e;
		}
		try (in; InputStream whole = new GZIPInputStream(in, BUFFER)) {
			// once through it, for nobody else says how large it will be
			check(source, whole.skip(BYTES + 1));
		} catch (ZipException | EOFException e) {
			throw new UnreadableArtException(source.name(), "", Messages.LargestFile_packed, e);
		}
		return new BufferedInputStream(new GZIPInputStream(source.open(), BUFFER), BUFFER);
	}

	private static void check(ImportSource source, long size) throws UnreadableArtException {
		if (size > BYTES) {
			throw new UnreadableArtException(source.name(), "", NLS.bind(Messages.LargestFile_size,
					(size + (1 << 20) - 1) >> 20, BYTES >> 20));
		}
	}
}
