package org.frisket.studio.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.util.ArrayList;
import java.util.List;

import org.h2.store.fs.FileBase;
import org.h2.store.fs.FilePathWrapper;

/** A file system for H2 that remembers what is written to its files, write by write. */
public final class WrittenFile extends FilePathWrapper {

	static final String SYSTEM = "written";

	private static final List<Write> WRITES = new ArrayList<>();
	/** How many of them the system was asked to put on the disc. */
	private static int onDisc;

	/** @param bytes that were written at a place; null if the file was cut off there */
	record Write(long at, byte[] bytes) {

		/** Does it again. @param length of how many bytes */
		void to(FileChannel file, int length) throws IOException {
			if (bytes != null) {
				file.write(ByteBuffer.wrap(bytes, 0, length), at);
			} else {
				file.truncate(at);
			}
		}

		int length() {
			return bytes == null ? 0 : bytes.length;
		}
	}

	static void forget() {
		synchronized (WRITES) {
			WRITES.clear();
			onDisc = 0;
		}
	}

	/** Whether all that was written is there even if the machine stops now. */
	static boolean isOnDisc() {
		synchronized (WRITES) {
			return onDisc == WRITES.size();
		}
	}

	/** In their order. */
	static List<Write> writes() {
		synchronized (WRITES) {
			return List.copyOf(WRITES);
		}
	}

	private static void remember(long at, byte[] bytes) {
		synchronized (WRITES) {
			WRITES.add(new Write(at, bytes));
		}
	}

	@Override
	public String getScheme() {
		return SYSTEM;
	}

	@Override
	public FileChannel open(String mode) throws IOException {
		return new Channel(getBase().open(mode));
	}

	private static final class Channel extends FileBase {

		private final FileChannel file;

		Channel(FileChannel file) {
			this.file = file;
		}

		@Override
		public synchronized int write(ByteBuffer bytes, long at) throws IOException {
			byte[] copy = new byte[bytes.remaining()];
			bytes.duplicate().get(copy);
			remember(at, copy);
			return file.write(bytes, at);
		}

		@Override
		public int write(ByteBuffer bytes) throws IOException {
			int written = write(bytes, file.position());
			file.position(file.position() + written);
			return written;
		}

		@Override
		public FileChannel truncate(long size) throws IOException {
			remember(size, null);
			file.truncate(size);
			return this;
		}

		@Override
		public int read(ByteBuffer bytes) throws IOException {
			return file.read(bytes);
		}

		@Override
		public synchronized int read(ByteBuffer bytes, long at) throws IOException {
			return file.read(bytes, at);
		}

		@Override
		public long position() throws IOException {
			return file.position();
		}

		@Override
		public FileChannel position(long at) throws IOException {
			file.position(at);
			return this;
		}

		@Override
		public long size() throws IOException {
			return file.size();
		}

		@Override
		public void force(boolean all) throws IOException {
			int written = writes().size();
			file.force(all);
			synchronized (WRITES) {
				onDisc = Math.max(onDisc, written);
			}
		}

		@Override
		public FileLock tryLock(long at, long size, boolean shared) throws IOException {
			return file.tryLock(at, size, shared);
		}

		@Override
		protected void implCloseChannel() throws IOException {
			file.close();
		}
	}
}
