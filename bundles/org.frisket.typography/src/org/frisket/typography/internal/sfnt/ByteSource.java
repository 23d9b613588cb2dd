package org.frisket.typography.internal.sfnt;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;

/** Bytes that are read in parts; a font file is listed without loading its glyphs. */
public interface ByteSource {

	long size() throws IOException;

	/** Big endian. @throws EOFException if the stretch is not all there */
	ByteBuffer read(long offset, int length) throws IOException;

	static ByteSource of(byte[] bytes) {
		return new ByteSource() {

			@Override
			public long size() {
				return bytes.length;
			}

			@Override
			public ByteBuffer read(long offset, int length) throws IOException {
				if (offset < 0 || length < 0 || offset + length > bytes.length) {
					throw new EOFException();
				}
				return ByteBuffer.wrap(bytes, (int) offset, length).slice();
			}
		};
	}

	static ByteSource of(FileChannel channel) {
		return new ByteSource() {

			@Override
			public long size() throws IOException {
				return channel.size();
			}

			@Override
			public ByteBuffer read(long offset, int length) throws IOException {
				if (offset < 0 || length < 0 || offset + length > channel.size()) {
					throw new EOFException();
				}
				ByteBuffer buffer = ByteBuffer.allocate(length);
				while (buffer.hasRemaining()) {
					if (channel.read(buffer, offset + buffer.position()) < 0) {
						throw new EOFException();
					}
				}
				return buffer.flip();
			}
		};
	}
}
