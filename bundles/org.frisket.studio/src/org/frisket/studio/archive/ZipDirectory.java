package org.frisket.studio.archive;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;

import org.eclipse.osgi.util.NLS;

/**
 * What the directory of a zip file says that {@link java.util.zip} does not tell: names that are there twice, and links
 * instead of files. Places and marks are those of PKWARE's APPNOTE.TXT 6.3.10, 4.3.12 and 4.3.16; the file type in the
 * upper half of the external attributes is that of POSIX.
 */
final class ZipDirectory {

	private static final int END = 0x06054b50;
	private static final int END_LENGTH = 22;
	private static final int LONGEST_COMMENT = 0xffff;
	private static final int ENTRY = 0x02014b50;
	private static final int ENTRY_LENGTH = 46;
	private static final int UNIX = 3;
	private static final int TYPE = 0xf000;
	private static final int LINK = 0xa000;
	/** A directory that is larger is not ours. */
	private static final int LARGEST = 64 << 20;

	private ZipDirectory() {
	}

	/** @throws ArchiveException if a name is there twice, or is that of a link; the message says which */
	static void check(Path file) throws IOException {
		ByteBuffer directory = read(file);
		Set<String> names = new HashSet<>();
		while (directory.remaining() >= ENTRY_LENGTH && directory.getInt(directory.position()) == ENTRY) {
			int at = directory.position();
			int length = directory.getShort(at + 28) & 0xffff;
			int more = (directory.getShort(at + 30) & 0xffff) + (directory.getShort(at + 32) & 0xffff);
			if (directory.remaining() < ENTRY_LENGTH + length + more) {
				throw new ArchiveException(file, Messages.StudioArchive_noZip);
			}
			byte[] bytes = new byte[length];
			directory.get(at + ENTRY_LENGTH, bytes);
			String name = new String(bytes, StandardCharsets.UTF_8);
			if (!names.add(name)) {
				throw new ArchiveException(file, NLS.bind(Messages.StudioArchive_twice, name));
			}
			if (directory.get(at + 5) == UNIX && (directory.getInt(at + 38) >>> 16 & TYPE) == LINK) {
				throw new ArchiveException(file, NLS.bind(Messages.StudioArchive_link, name));
			}
			directory.position(at + ENTRY_LENGTH + length + more);
		}
	}

	/** The directory; that of a file with more entries than a plain one takes ends where the others begin. */
	private static ByteBuffer read(Path file) throws IOException {
		try (FileChannel channel = FileChannel.open(file)) {
			long size = channel.size();
			ByteBuffer tail = bytes(channel, Math.max(0, size - END_LENGTH - LONGEST_COMMENT), size);
			for (int at = tail.limit() - END_LENGTH; at >= 0; at--) {
				if (tail.getInt(at) == END) {
					long length = tail.getInt(at + 12) & 0xffffffffL;
					long end = size - tail.limit() + at;
					if (length <= Math.min(LARGEST, end)) {
						return bytes(channel, end - length, end);
					}
				}
			}
		}
		throw new ArchiveException(file, Messages.StudioArchive_noZip);
	}

	private static ByteBuffer bytes(FileChannel channel, long from, long to) throws IOException {
		ByteBuffer bytes = ByteBuffer.allocate((int) (to - from)).order(ByteOrder.LITTLE_ENDIAN);
		while (bytes.hasRemaining() && channel.read(bytes, from + bytes.position()) >= 0) {
			// until all is there
		}
		return bytes.flip();
	}
}
