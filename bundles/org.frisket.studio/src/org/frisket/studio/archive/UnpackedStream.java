package org.frisket.studio.archive;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

import org.eclipse.osgi.util.NLS;

/** What comes out of a packed file, which ends with a refusal if it is out of all proportion to what went in. */
final class UnpackedStream extends FilterInputStream {

	/** In bytes; so much is harmless however well it was packed. */
	private static final long HARMLESS = 16L << 20;
	/** Tables and fonts are packed to a twentieth at best, a blank file to a thousandth. */
	private static final long MOST_TIMES = 100;

	private final long most;
	private final IOException refusal;
	private long count;

	/** @param packed how many bytes went in */
	private UnpackedStream(InputStream in, long packed, IOException refusal) {
		super(in);
		most = Math.max(HARMLESS, packed * MOST_TIMES);
		this.refusal = refusal;
	}

	/** An entry of an archive. @param file the archive, as messages call it */
	static InputStream of(ZipFile zip, Path file, ZipEntry entry) throws IOException {
		return new UnpackedStream(zip.getInputStream(entry), entry.getCompressedSize(),
				new ArchiveException(file, NLS.bind(Messages.StudioArchive_bomb, entry.getName())));
	}

	@Override
	public int read() throws IOException {
		int b = in.read();
		counted(b < 0 ? 0 : 1);
		return b;
	}

	@Override
	public int read(byte[] bytes, int offset, int length) throws IOException {
		int read = in.read(bytes, offset, length);
		counted(Math.max(0, read));
		return read;
	}

	private void counted(int bytes) throws IOException {
		count += bytes;
		if (count > most) {
			throw refusal;
		}
	}
}
