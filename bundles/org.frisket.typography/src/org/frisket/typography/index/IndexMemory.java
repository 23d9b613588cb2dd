package org.frisket.typography.index;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;

import org.frisket.typography.source.FontFile;

/**
 * What earlier passes learned. Kept in one file with its version and a checksum; a file that is damaged, of another
 * version or not there counts as empty, for all of it can be learned again.
 */
final class IndexMemory {

	/** A face by the content of its file. */
	record Key(String digest, int index, String instance) {
	}

	private static final String FILE = "faces.index";
	private static final int MAGIC = 0x46524958;
	private static final int VERSION = 2;
	private static final int CHECKSUM_BYTES = Long.BYTES;
	/** Beyond this, what the latest pass did not use is dropped. */
	private static final int MOST_FACES = 20_000;

	private final Map<FontFile, String> digests = new LinkedHashMap<>();
	private final Map<Key, FaceRecord> faces = new LinkedHashMap<>();
	private final Map<Key, String> reasons = new LinkedHashMap<>();
	private final Map<Key, FaceRecord> used = new LinkedHashMap<>();
	private boolean changed;

	Optional<String> digest(FontFile file) {
		return Optional.ofNullable(digests.get(file));
	}

	void put(FontFile file, String digest) {
		digests.keySet().removeIf(f -> f.path().equals(file.path()) && !f.equals(file));
		digests.put(file, digest);
		changed = true;
	}

	Optional<FaceRecord> face(Key key) {
		FaceRecord face = faces.get(key);
		if (face != null) {
			used.put(key, face);
		}
		return Optional.ofNullable(face);
	}

	void put(Key key, FaceRecord face) {
		faces.put(key, face);
		used.put(key, face);
		changed = true;
	}

	Optional<String> broken(Key key) {
		return Optional.ofNullable(reasons.get(key));
	}

	void putBroken(Key key, String reason) {
		reasons.put(key, reason);
		changed = true;
	}

	static IndexMemory read(Path folder) {
		IndexMemory memory = new IndexMemory();
		try {
			byte[] bytes = Files.readAllBytes(folder.resolve(FILE));
			int length = bytes.length - CHECKSUM_BYTES;
			if (length > 0 && checksum(bytes, length) == ByteBuffer.wrap(bytes).getLong(length)) {
				memory.readFrom(new DataInputStream(new ByteArrayInputStream(Arrays.copyOf(bytes, length))));
			}
		} catch (IOException | RuntimeException unusable) {
			return new IndexMemory();
		}
		return memory;
	}

	private void readFrom(DataInputStream in) throws IOException {
		if (in.readInt() != MAGIC || in.readInt() != VERSION) {
			return;
		}
		for (int n = in.readInt(); n > 0; n--) {
			digests.put(new FontFile(Path.of(in.readUTF()), in.readLong(), in.readLong()), in.readUTF());
		}
		for (int n = in.readInt(); n > 0; n--) {
			faces.put(readKey(in), FaceRecordFormat.read(in));
		}
		for (int n = in.readInt(); n > 0; n--) {
			reasons.put(readKey(in), in.readUTF());
		}
	}

	private static Key readKey(DataInputStream in) throws IOException {
		return new Key(in.readUTF(), in.readInt(), in.readUTF());
	}

	/** Writes what is new, whole or not at all. A folder that cannot be written costs the time to learn again. */
	void write(Path folder) {
		if (!changed) {
			return;
		}
		try {
			Files.createDirectories(folder);
			Path half = Files.createTempFile(folder, "faces", ".part");
			try {
				Files.write(half, bytes());
				Files.move(half, folder.resolve(FILE), StandardCopyOption.ATOMIC_MOVE,
						StandardCopyOption.REPLACE_EXISTING);
			} finally {
				Files.deleteIfExists(half);
			}
		} catch (IOException unwritable) {
			// nothing is lost but time
			return;
		}
		changed = false;
	}

	private byte[] bytes() {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		try {
			DataOutputStream out = new DataOutputStream(bytes);
			out.writeInt(MAGIC);
			out.writeInt(VERSION);
			out.writeInt(digests.size());
			for (Map.Entry<FontFile, String> file : digests.entrySet()) {
				out.writeUTF(file.getKey().path().toString());
				out.writeLong(file.getKey().size());
				out.writeLong(file.getKey().modified());
				out.writeUTF(file.getValue());
			}
			Map<Key, FaceRecord> kept = faces.size() > MOST_FACES ? used : faces;
			out.writeInt(kept.size());
			for (Map.Entry<Key, FaceRecord> face : kept.entrySet()) {
				writeKey(out, face.getKey());
				FaceRecordFormat.write(out, face.getValue());
			}
			out.writeInt(reasons.size());
			for (Map.Entry<Key, String> reason : reasons.entrySet()) {
				writeKey(out, reason.getKey());
				out.writeUTF(reason.getValue());
			}
			byte[] content = bytes.toByteArray();
			out.writeLong(checksum(content, content.length));
		} catch (IOException never) {
			throw new UncheckedIOException(never);
		}
		return bytes.toByteArray();
	}

	private static void writeKey(DataOutputStream out, Key key) throws IOException {
		out.writeUTF(key.digest());
		out.writeInt(key.index());
		out.writeUTF(key.instance());
	}

	private static long checksum(byte[] bytes, int length) {
		CRC32 crc = new CRC32();
		crc.update(bytes, 0, length);
		return crc.getValue();
	}
}
